import { texts } from "./texts.js";

/**
 * A text of the site in the page's language. The key is written out where it is said, or in a
 * table made by `keys`: by that the site knows which texts a script brings along.
 * @param {string} key as in site_data/words
 * @param {Record<string, string | number>} [values] for the places in the text; `n` also chooses the plural form
 */
export function say(key, values = {}) {
  const { lang } = document.documentElement;
  const text = texts[key];
  if (text === undefined) throw new Error(key); // a bug: the tests hold every key against the words
  const form = typeof text === "string" ? text : (text[new Intl.PluralRules(lang).select(Number(values.n))] ?? text.other ?? "");
  return form.replace(/\{(\w+)\}/g, (_, name) => {
    const value = values[name] ?? "";
    return typeof value === "number" ? value.toLocaleString(lang) : value;
  });
}
