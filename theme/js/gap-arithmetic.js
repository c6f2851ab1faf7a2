/** Numbers as we write them back, in tenths, and where counting up rests. */

/**
 * @param {number} tenths
 * @param {string} language
 */
export function writeTenths(tenths, language) {
  return new Intl.NumberFormat(language).format(tenths / 10);
}

/**
 * A round number to stop at when counting up: the next hundred, else the next ten, else nothing.
 * @param {number} smaller tenths
 * @param {number} larger tenths
 */
export function restingPlace(smaller, larger) {
  return [1000, 100].map((step) => (Math.floor(smaller / step) + 1) * step).find((place) => place < larger) ?? 0;
}
