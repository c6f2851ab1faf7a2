/**
 * Texts of what comes later than the page, by key: `later_` in site_data/words. The site writes
 * them in here, once for each language, so that the page need not carry them.
 *
 * @type {Record<string, string | Record<string, string>>}
 */
export const moreTexts = {};
