/** The page that stands in the place of one that is not kept, where there is no network. */
import { copies, copyOf, listOf } from "./kept-names.js";
import { notKeptTexts } from "./not-kept-texts.js";

/** What lessons' pages begin with, and so every copy holds. */
const NOT_KEPT_STYLES = ["screen", "below"];
/** It loads these styles and nothing else, and runs no script at all (W3C Content Security Policy 3). */
const NOT_KEPT_POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'none'; base-uri 'none'";

/**
 * Says that a page is not kept, in the language of its address, and leads to the lessons that are.
 * @param {string} address of the page that was asked for
 * @param {string} root address of the site, ending in a slash
 */
export async function notKept(address, root) {
  const site = new URL(root).pathname;
  const folder = languageFolder(new URL(address).pathname, site);
  const page = notKeptPage(site, folder, await keptLines(site));
  const headers = { "Content-Type": "text/html; charset=utf-8", "Content-Security-Policy": NOT_KEPT_POLICY, "Referrer-Policy": "no-referrer" };
  return new Response(page, { status: 503, headers }); // "Service Unavailable" (RFC 9110, 15.6.4): nobody takes it for the page itself
}

/**
 * @param {string} site path of the site
 * @param {string} folder of the language
 * @param {string[]} lines of the list of what is kept
 */
function notKeptPage(site, folder, lines) {
  const { language, direction, says } = textsOf(folder);
  const text = (/** @type {string} */ key) => escaped(says[key] ?? "");
  const styles = NOT_KEPT_STYLES.map((name) => `<link rel="stylesheet" href="${escaped(site)}assets/${name}.css">`);
  const list = lines.length ? [`<p>${text("not_kept_these")}</p>`, '<ul class="alone">', ...lines, "</ul>"] : [];
  return [
    `<!doctype html>\n<html lang="${language}"${direction === "rtl" ? ' dir="rtl"' : ""}>`,
    '<head>\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width, initial-scale=1">\n<meta name="color-scheme" content="light dark">',
    `<title>${text("not_kept")}</title>`,
    ...styles,
    `</head>\n<body>\n<header class="top column"><a href="${escaped(site + folder)}index.html">${text("all_lessons")}</a></header>`,
    '<main id="main" class="column">',
    `<h1>${text("not_kept")}</h1>\n<p>${text("not_kept_says")}</p>`,
    ...list,
    `<p><a class="button" href="">${text("not_kept_again")}</a></p>`,
    "</main>\n</body>\n</html>\n",
  ].join("\n");
}

/**
 * A line for each lesson that is kept whole, in its own language.
 * @param {string} site path of the site
 */
async function keptLines(site) {
  const lines = [];
  for (const folder of new Set((await copies()).values())) {
    const held = folder.startsWith(site) ? await copyOf(new URL(folder, location.origin).href) : null;
    const list = held && (await listOf(held));
    const { language, direction } = textsOf(languageFolder(folder, site));
    if (list) lines.push(`<li><a href="${escaped(folder)}index.html" lang="${language}" dir="${direction}">${escaped(list.title)}</a></li>`);
  }
  return lines;
}

/**
 * Where the language of an address has its pages: `es/`, or nothing for the site's first one.
 * @param {string} path of the address
 * @param {string} site path of the site
 */
function languageFolder(path, site) {
  const below = path.slice(site.length);
  return Object.keys(notKeptTexts).find((folder) => folder && below.startsWith(folder)) ?? "";
}

/** @param {string} folder of a language */
function textsOf(folder) {
  return notKeptTexts[folder] ?? { language: "en", direction: "ltr", says: {} };
}

/** @param {string} text to stand in HTML, or in an attribute of it */
function escaped(text) {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
