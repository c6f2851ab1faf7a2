import { moreTexts } from "./more-texts.js";

/**
 * A text that came with this script, in the page's language.
 * @param {string} key as in site_data/words, without its `later_`
 * @param {Record<string, string | number>} [values] for the places in the text; `n` also chooses the plural form
 */
export function tell(key, values = {}) {
  const { lang } = document.documentElement;
  const text = moreTexts[`later_${key}`] ?? "";
  const form = typeof text === "string" ? text : (text[new Intl.PluralRules(lang).select(Number(values.n))] ?? text.other ?? "");
  return form.replace(/\{(\w+)\}/g, (_, name) => {
    const value = values[name] ?? "";
    return typeof value === "number" ? value.toLocaleString(lang) : value;
  });
}

/**
 * Bytes as a family reads them: `1.4 MB`, never nothing.
 * @param {number} bytes
 */
export function megabytes(bytes) {
  return tell("size", { size: Math.max(0.1, Math.round(bytes / 100_000) / 10) });
}
