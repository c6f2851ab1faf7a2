/**
 * Takes a class link along to the other pages of its lesson and to its other languages. Where
 * answers wait, the answer key is no way on.
 * @param {string} text
 * @param {boolean} withKey
 */
export function carryClassLink(text, withKey) {
  const folder = new URL(".", location.href).href;
  for (const link of document.querySelectorAll(/** @type {"a"} */ ("main a[href], a[data-language]"))) {
    const isOwn = link.matches("[data-language]") || (link.href.startsWith(folder) && link.pathname.endsWith(".html"));
    if (!isOwn || link.hash || link.getAttribute("href")?.startsWith("#")) continue;
    link.hash = text;
    if (!withKey && link.pathname.endsWith("/answers.html")) (link.closest("li") ?? link).hidden = true;
  }
}
