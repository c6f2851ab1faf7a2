import { readTenths, restingPlace, writeTenths } from "./gap-arithmetic.js";
import { countMistake, gapMistake } from "./mistakes.js";
import { tell } from "./tell.js";

/**
 * An entry that is not right yet. Numbers are in tenths.
 *
 * @typedef {object} Entry
 * @property {number} larger
 * @property {number} smaller
 * @property {number} per how much of the gap is one count; nothing where only the gap is asked
 * @property {boolean} counting whether the count is asked and not the gap
 * @property {string} text that the learner wrote
 */

/**
 * Says what led to a wrong answer and what the next smaller step is.
 * @param {Entry} entry
 */
export function notYet({ larger, smaller, per, counting, text }) {
  const language = document.documentElement.lang;
  const tenths = readTenths(text, language);
  const rest = restingPlace(smaller, larger);
  const numbers = Object.entries({ larger, smaller, per, rest, gap: larger - smaller });
  const written = Object.fromEntries(numbers.map(([name, number]) => [name, writeTenths(number, language)]));
  if (!text.trim()) return tell(counting ? "play_count_empty" : "play_gap_empty", written);
  if (tenths === null) return tell("play_unread", written);
  if (counting) return tell(`play_${countMistake(larger - smaller, per, tenths) || "count_step"}`, written);
  return tell(`play_${gapMistake(larger, smaller, tenths) || (rest ? "gap_step" : "gap_look")}`, written);
}

/**
 * Answers the rows that ask with `not-yet`.
 * @param {EventTarget} page
 */
export function readAnswers(page) {
  page.addEventListener("not-yet", (event) => {
    const { detail } = /** @type {CustomEvent} */ (event);
    detail.says = notYet(detail);
  });
}
