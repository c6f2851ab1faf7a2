/**
 * What the page in the place of one that is not kept says, by the folder of each language, the
 * site's first one first. The worker of a site is joined with its own words in the place of these.
 *
 * @typedef {object} NotKeptIn
 * @property {string} language tag of BCP 47
 * @property {string} direction in which it is written, `ltr` or `rtl`
 * @property {Record<string, string>} says
 */

/** @type {Record<string, NotKeptIn>} */
export const notKeptTexts = { "": { language: "en", direction: "ltr", says: {} } };
