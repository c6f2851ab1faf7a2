/**
 * Which count it is, from the time alone: never from how many ticks were heard, for a busy or
 * hidden page loses ticks. Knows no page and no clock; whoever asks brings the time along.
 *
 * @typedef {object} Pacing
 * @property {number} beats where the count stood at `since`; its parts of a beat are kept
 * @property {number} since ms on the clock of whoever asks
 * @property {number} pace beats a minute
 * @property {boolean} runs
 */

/** ms */
const MINUTE = 60_000;
/** beats a minute */
const SLOWEST = 10;
/** degrees */
const SWING = 20;

/**
 * A count that has not begun.
 * @param {number} pace beats a minute
 * @returns {Pacing}
 */
export function still(pace) {
  return { beats: 0, since: 0, pace, runs: false };
}

/**
 * @param {Pacing} pacing
 * @param {number} now ms
 */
export function beatsAt({ beats, since, pace, runs }, now) {
  return runs ? beats + (Math.max(0, now - since) * pace) / MINUTE : beats;
}

/**
 * Begins, or goes on in the middle of the beat where it was paused.
 * @param {Pacing} pacing
 * @param {number} now ms
 * @returns {Pacing}
 */
export function run(pacing, now) {
  return { ...pacing, beats: beatsAt(pacing, now), since: now, runs: true };
}

/**
 * @param {Pacing} pacing
 * @param {number} now ms
 * @returns {Pacing}
 */
export function pause(pacing, now) {
  return { ...pacing, beats: beatsAt(pacing, now), since: now, runs: false };
}

/**
 * Another pace from now on; a beat that has begun is finished from where it stands.
 * @param {Pacing} pacing
 * @param {number} now ms
 * @param {number} pace beats a minute
 * @returns {Pacing}
 */
export function atPace(pacing, now, pace) {
  return { ...pacing, beats: beatsAt(pacing, now), since: now, pace };
}

/**
 * The number to show: 0 before the first beat, then whole beats.
 * @param {Pacing} pacing
 * @param {number} now ms
 */
export function numberAt(pacing, now) {
  return Math.floor(beatsAt(pacing, now) + 1e-9); // 0.1 + 0.2 must not hold a beat back
}

/**
 * When a number is due, on the same clock; only for a count that runs.
 * @param {Pacing} pacing
 * @param {number} number
 */
export function dueAt({ beats, since, pace }, number) {
  return since + ((number - beats) * MINUTE) / pace;
}

/**
 * A step slower or faster, in fives, within what a child can do and half as fast again as the move.
 * @param {number} pace beats a minute
 * @param {number} steps below 0 for slower
 * @param {number} own the move's pace
 */
export function nextPace(pace, steps, own) {
  const wanted = (Math.round(pace / 5) + steps) * 5;
  return Math.min(Math.max(wanted, SLOWEST), fastest(own));
}

/**
 * The pace that was kept on the device, where a child can do it; the move's own where it cannot be believed.
 * @param {string} kept as it was written; nothing where none was
 * @param {number} own the move's pace
 */
export function keptPace(kept, own) {
  const pace = Number(kept);
  return pace >= SLOWEST && pace <= fastest(own) ? pace : own; // NaN is neither
}

/** @param {number} own the move's pace */
function fastest(own) {
  return Math.floor(own * 0.3) * 5;
}

/**
 * How far a plumb bob hangs out: across once a count, at its turn when a number comes. It sets out
 * from straight down and swings whole from the first count on.
 * @param {number} beats with their parts
 * @returns {number} degrees, below 0 to the other side
 */
export function swingAt(beats) {
  return -SWING * Math.min(Math.max(beats, 0), 1) * Math.cos(Math.PI * beats);
}
