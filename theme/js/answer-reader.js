import { restingPlace, writeTenths } from "./gap-arithmetic.js";
import { keys } from "./keys.js";
import { countMistake, gapMistake } from "./mistakes.js";
import { readings } from "./read-tenths.js";
import { say } from "./say.js";

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
 * What is said of each mistake of mistakes.js, and where none is seen.
 * @type {Record<string, string> & { unread: string, count_step: string }}
 */
const NOT_YET = keys({
  unread: "not_yet_unread",
  gap_step: "not_yet_gap_step",
  gap_look: "not_yet_gap_look",
  count_step: "not_yet_count_step",
  count_step_10: "not_yet_count_step_ones",
  count_step_20: "not_yet_count_step_twos",
  count_step_40: "not_yet_count_step_fours",
  count_step_100: "not_yet_count_step_tens",
  count_step_200: "not_yet_count_step_twenties",
  smaller_from_larger: "not_yet_smaller_from_larger",
  no_decrement: "not_yet_no_decrement",
  zero_gives_digit: "not_yet_zero_gives_digit",
  zero_gives_zero: "not_yet_zero_gives_zero",
  across_zero: "not_yet_across_zero",
  added: "not_yet_added",
  forgot_to_divide: "not_yet_forgot_to_divide",
  multiplied: "not_yet_multiplied",
  took_one_away: "not_yet_took_one_away",
  moved_zero: "not_yet_moved_zero",
  counted_left_over: "not_yet_counted_left_over",
  took_zero: "not_yet_took_zero",
  same_number: "not_yet_same_number",
  own_number: "not_yet_own_number",
  one_off: "not_yet_one_off",
  one_out: "not_yet_one_out",
  counted_tens: "not_yet_counted_tens",
  divided_by_tens: "not_yet_divided_by_tens",
  gave_left_over: "not_yet_gave_left_over",
  counted_hundreds: "not_yet_counted_hundreds",
  stopped_at_hundreds: "not_yet_stopped_at_hundreds",
  dropped_zero: "not_yet_dropped_zero",
  kept_zero: "not_yet_kept_zero",
  ten_off: "not_yet_ten_off",
  hundred_off: "not_yet_hundred_off",
});

/**
 * A number in a way that cannot be read as another one: without a sign between thousands.
 * @param {number} tenths
 * @param {string} language
 */
function unmistakable(tenths, language) {
  return new Intl.NumberFormat(language, { useGrouping: false }).format(tenths / 10);
}

/**
 * Says what led to a wrong answer and what the next smaller step is.
 * @param {Entry} entry
 */
export function notYet({ larger, smaller, per, counting, text }) {
  const language = document.documentElement.lang;
  const [tenths, other] = readings(text, language, counting ? "" : say("not_ones"));
  const rest = restingPlace(smaller, larger);
  const numbers = Object.entries({ larger, smaller, per, rest, gap: larger - smaller, tens: per / 10, more: (larger - smaller) % 1000 });
  const written = Object.fromEntries(numbers.map(([name, number]) => [name, writeTenths(number, language)]));
  if (!text.trim()) return counting ? say("not_yet_count_empty", written) : say("not_yet_gap_empty", written);
  if (tenths === undefined) return readings(text, language).length ? say("not_yet_not_ones", written) : say("not_yet_unread", written);
  if (tenths < 0) return say("not_yet_below_zero", written);
  if (other !== undefined) return say("not_yet_two_ways", { one: unmistakable(tenths, language), other: unmistakable(other, language) });
  return say(counting ? ofCount(larger - smaller, per, tenths) : ofGap(larger, smaller, tenths, rest), written);
}

/**
 * @param {number} larger
 * @param {number} smaller
 * @param {number} answer
 * @param {number} rest
 */
function ofGap(larger, smaller, answer, rest) {
  return NOT_YET[gapMistake(larger, smaller, answer) || (rest ? "gap_step" : "gap_look")] ?? NOT_YET.unread;
}

/**
 * Where nothing is seen, the next step is one that fits what a count is made of.
 * @param {number} gap
 * @param {number} per
 * @param {number} answer
 */
function ofCount(gap, per, answer) {
  const seen = countMistake(gap, per, answer);
  if (!seen) return NOT_YET[`count_step_${per}`] ?? NOT_YET.count_step;
  return NOT_YET[seen === "one_off" ? "one_out" : seen] ?? NOT_YET.unread;
}
