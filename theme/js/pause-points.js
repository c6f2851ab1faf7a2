/**
 * Which pause point a video has come to. Knows no video and no page.
 *
 * @typedef {object} PausePoint
 * @property {number} at seconds
 * @property {string} stop id of the stop that begins there
 */

/**
 * The point to halt at after the video went from one time to another, by playing or by seeking.
 * Where a seek crosses several, the one nearest to where it ended: that is where the learner wants
 * to be. Of several at one moment, the first; the others have their turn when it is passed.
 *
 * @param {readonly PausePoint[]} points in order of time
 * @param {number} before seconds
 * @param {number} now seconds
 * @param {ReadonlySet<string>} passed stops at which the learner has gone on
 * @returns {PausePoint | undefined}
 */
export function pauseBetween(points, before, now, passed) {
  const crossed = points.filter(({ at, stop }) => before < at && at <= now && !passed.has(stop));
  return crossed.find(({ at }) => at === crossed[crossed.length - 1]?.at);
}

/**
 * Seconds of video until the next point; without end where there is none.
 * @param {readonly PausePoint[]} points in order of time
 * @param {number} now seconds
 * @param {ReadonlySet<string>} passed
 */
export function untilNext(points, now, passed) {
  const next = points.find(({ at, stop }) => at > now && !passed.has(stop));
  return (next?.at ?? Infinity) - now;
}
