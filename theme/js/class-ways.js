/** The answer key, and the packet that holds it, as page and as file. */
const HOLDS_KEY = /\/(answers|packet)[^/]*\.(html|pdf)$/;

/**
 * Takes a class link along to the other pages of its lesson and back, and to its other languages.
 * Where answers wait, the answer key is no way on.
 * @param {string} text
 * @param {import("./class-link.js").ClassLink} link
 */
export function carryClassLink(text, { answers }) {
  const folder = new URL(".", location.href).href;
  for (const way of document.querySelectorAll(/** @type {"a"} */ ("a[href]"))) {
    const isOwn = way.href.startsWith(folder);
    if (isOwn && answers !== "once" && HOLDS_KEY.test(way.pathname)) (way.closest("li") ?? way).hidden = true;
    if ((isOwn || way.matches("[data-language]")) && way.pathname.endsWith(".html") && !way.href.includes("#")) way.hash = text;
  }
}
