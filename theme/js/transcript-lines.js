/**
 * Captions as lines to read. Knows no video and no page.
 *
 * @typedef {object} Said
 * @property {number} startTime seconds
 * @property {string} text
 */

/**
 * Whole sentences, each from the moment its first caption stands.
 * @param {Iterable<Said>} cues in order of time
 * @returns {Said[]}
 */
export function sentences(cues) {
  /** @type {Said[]} */
  const lines = [];
  let ended = true;
  for (const { startTime, text } of cues) {
    const words = text.replace(/<[^>]*>/g, "").replace(/\s+/g, " ").trim();
    const line = lines[lines.length - 1];
    if (ended || !line) lines.push({ startTime, text: words });
    else line.text += ` ${words}`;
    ended = /[.?!…][")»”’]*$/.test(words);
  }
  return lines;
}

/**
 * Which line is said at a moment: the last that has begun, or -1 before the first.
 * @param {readonly Said[]} lines
 * @param {number} now seconds
 */
export function lineAt(lines, now) {
  return lines.filter(({ startTime }) => startTime <= now).length - 1;
}

/**
 * `1:10` from 70 seconds.
 * @param {number} seconds
 */
export function clock(seconds) {
  const whole = Math.floor(seconds);
  const minutes = Math.floor(whole / 60);
  const two = (/** @type {number} */ number) => String(number % 60).padStart(2, "0");
  return minutes < 60 ? `${minutes}:${two(whole)}` : `${Math.floor(minutes / 60)}:${two(minutes)}:${two(whole)}`;
}
