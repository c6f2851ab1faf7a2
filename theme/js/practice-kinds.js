import { practiceProblems } from "./practice-numbers.js";

/**
 * A set of practice problems: the same as generator/compute/practice_set.py, which says how it is
 * made of subtractions. Knows no page.
 *
 * @typedef {object} Problem
 * @property {"gap" | "count" | "which"} kind
 * @property {number} first
 * @property {number} second
 */

const ROUND = 6; // after so many the kinds begin anew
const MOST_COUNTS = 40;

/**
 * Problems without end.
 * @param {string} seed
 * @param {number} largest no number is larger
 * @param {number} per what one count stands for; 0 where nothing is counted
 * @returns {Generator<Problem, never>}
 */
export function* practiceSet(seed, largest, per) {
  const pairs = practiceProblems(seed, largest);
  for (let at = 1; ; at = (at % ROUND) + 1) yield made(pairs.next().value, at, largest, per);
}

/**
 * @param {import("./practice-numbers.js").Problem} pair
 * @param {number} at its place in the round, from 1
 * @param {number} largest
 * @param {number} per
 * @returns {Problem}
 */
function made({ larger, smaller }, at, largest, per) {
  const most = per > 1 ? Math.min(MOST_COUNTS, Math.floor((largest + 1) / per) - 1) : 0;
  if ((at === 2 || at === 5) && most > 0) return { kind: "count", first: per * (1 + (larger % most)) + 1 + (smaller % (per - 1)), second: per };
  if (at === 4) return { kind: "gap", first: larger, second: larger };
  if (at === 6) {
    const [first, second] = (larger + smaller) % 2 ? [smaller, larger] : [larger, smaller];
    return { kind: "which", first, second };
  }
  return { kind: "gap", first: larger, second: smaller };
}
