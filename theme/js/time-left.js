/**
 * The time that a timer shows. It knows no clock and no page: whoever asks says what time it is.
 *
 * @typedef {object} TimeLeft
 * @property {number} left ms, when it was last started or stood still
 * @property {number | null} since when it was started, in ms; null while it stands
 */

/**
 * @param {number} minutes
 * @returns {TimeLeft}
 */
export function setTo(minutes) {
  return { left: minutes * 60_000, since: null };
}

/**
 * Milliseconds that are left; never below nothing.
 * @param {TimeLeft} timer
 * @param {number} now ms
 */
export function leftAt({ left, since }, now) {
  return Math.max(0, since === null ? left : left - (now - since));
}

/**
 * @param {TimeLeft} timer
 * @param {number} now ms
 * @returns {TimeLeft}
 */
export function startedAt({ left }, now) {
  return { left, since: now };
}

/**
 * @param {TimeLeft} timer
 * @param {number} now ms
 * @returns {TimeLeft}
 */
export function stoodAt(timer, now) {
  return { left: leftAt(timer, now), since: null };
}

/**
 * Whole seconds as they are shown: a minute begins with 1:00 and ends when nothing is left.
 * @param {TimeLeft} timer
 * @param {number} now ms
 */
export function shownSeconds(timer, now) {
  return Math.ceil(leftAt(timer, now) / 1000);
}
