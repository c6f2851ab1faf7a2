/**
 * The texts that the scripts of one file say, by key as in site_data/words. The site writes them
 * in here, once for each language: just those that a module of the file names.
 *
 * @type {Record<string, string | Record<string, string>>}
 */
export const texts = {};
