import { bugAnswers } from "./mistakes.js";
import { textHash } from "./text-hash.js";

/**
 * Subtraction practice from a seed: the same problems as generator/compute/practice.py, which says
 * how they are chosen. Knows no page.
 *
 * @typedef {object} Problem
 * @property {number} larger
 * @property {number} smaller
 */

const TRIES = 16; // pairs looked at for one problem
const EVERY_THIRD = 3; // borrows at a 0

/**
 * Problems without end.
 * @param {string} seed
 * @param {number} largest
 * @returns {Generator<Problem, never>}
 */
export function* practiceProblems(seed, largest) {
  const pairs = pairsOf(seed, largest);
  /** @type {Set<string>} */
  const seen = new Set();
  for (let number = 1; ; number += 1) {
    const tries = Array.from({ length: TRIES }, () => pairs.next().value);
    const fresh = tries.filter((pair) => !seen.has(nameOf(pair)));
    const problem = mostTelling(fresh.length ? fresh : tries, number % EVERY_THIRD === 0);
    seen.add(nameOf(problem));
    yield problem;
  }
}

/**
 * The next state of a xorshift of 32 bits with shifts 13, 17 and 5.
 * @param {number} state
 */
export function shifted(state) {
  state ^= state << 13;
  state ^= state >>> 17;
  state ^= state << 5;
  return state >>> 0;
}

/**
 * @param {string} seed
 * @param {number} largest
 * @returns {Generator<Problem, never>}
 */
function* pairsOf(seed, largest) {
  let state = textHash(seed) || 1;
  const draw = () => 1 + (((state = shifted(state)) >>> 3) % largest);
  const least = Math.max(1, Math.floor(largest / 50));
  for (;;) {
    const [one, other] = [draw(), draw()];
    if (Math.min(one, other, Math.abs(one - other)) >= least) yield { larger: Math.max(one, other), smaller: Math.min(one, other) };
  }
}

/**
 * The first of those whose wrong answers tell most.
 * @param {Problem[]} pairs
 * @param {boolean} atZero
 */
function mostTelling(pairs, atZero) {
  const telling = pairs.map((pair) => tellingOf(pair, atZero));
  return /** @type {Problem} */ (pairs[telling.indexOf(Math.max(...telling))]); // `indexOf` finds the first
}

/**
 * @param {Problem} pair
 * @param {boolean} atZero
 */
function tellingOf({ larger, smaller }, atZero) {
  const right = larger - smaller;
  const wrong = Object.entries(bugAnswers(larger, smaller)).filter(([, [answer = right]]) => answer !== right);
  const borrows = wrong.length > 1;
  const differ = borrows && new Set(wrong.map(([, [answer]]) => answer)).size === wrong.length;
  const fits = borrows && wrong.some(([bug]) => bug === "zero_gives_digit") === atZero;
  return Number(borrows) + Number(differ) + Number(fits);
}

/** @param {Problem} problem */
function nameOf({ larger, smaller }) {
  return `${larger} ${smaller}`;
}
