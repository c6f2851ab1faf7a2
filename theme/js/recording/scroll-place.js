/** Where the reader of a script is: arithmetic of words and time, apart from the page. */

/**
 * @param {number} milliseconds since reading began
 * @param {number} wordsAMinute the pace, above 0
 */
export function wordsRead(milliseconds, wordsAMinute) {
  return (milliseconds / 60000) * wordsAMinute;
}

/**
 * The paragraph that is being read, and how much of it lies behind.
 * @param {number} words read so far, from the first paragraph on
 * @param {number[]} counts words of each paragraph
 * @returns {{ index: number, share: number }} at the end: the last paragraph, and all of it
 */
export function scriptPlace(words, counts) {
  let left = words;
  for (const [index, count] of counts.entries()) {
    if (left < count) return { index, share: left / count };
    left -= count;
  }
  return { index: counts.length - 1, share: 1 };
}

/**
 * How many words there are up to a paragraph's beginning.
 * @param {number} index of the paragraph
 * @param {number[]} counts
 */
export function wordsBefore(index, counts) {
  return counts.slice(0, index).reduce((sum, count) => sum + count, 0);
}
