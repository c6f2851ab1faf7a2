/** The page's own texts, which the site wrote into it in its language. */

/** @type {Record<string, string> | undefined} */
let texts;

/**
 * @param {string} key as in site_data/words, without its `js_`
 * @param {Record<string, string>} [values] for the places in the text
 */
export function say(key, values = {}) {
  texts ??= /** @type {Record<string, string>} */ (JSON.parse(document.getElementById("words")?.textContent || "{}"));
  return (texts[`js_${key}`] ?? "").replace(/\{(\w+)\}/g, (_, name) => values[name] ?? "");
}
