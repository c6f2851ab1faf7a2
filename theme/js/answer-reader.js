import { restingPlace, writeTenths } from "./gap-arithmetic.js";
import { keys } from "./keys.js";
import { countMistake, gapMistake } from "./mistakes.js";
import { readings } from "./read-tenths.js";
import { say } from "./say.js";
import { planOf } from "./written-plan.js";

/**
 * An entry that is not right yet. Numbers are in tenths.
 *
 * @typedef {object} Entry
 * @property {number} larger
 * @property {number} smaller
 * @property {number} per how much of the gap is one count; nothing where only the gap is asked
 * @property {boolean} counting whether the count is asked and not the gap
 * @property {boolean} [gapFound] whether the learner has written the right gap already
 * @property {string} text that the learner wrote
 */

/** What is said where nothing is written yet. */
const EMPTY = keys({ gap: "not_yet_gap_empty", count: "not_yet_count_empty", alone: "not_yet_count_alone" });

/**
 * What is said of each mistake of mistakes.js, of what is no answer yet, and where nothing is seen.
 * @type {Record<string, string> & { unread: string, not_ones: string, two_ways: string, below_zero: string, count_below_zero: string, count_step: string }}
 */
const NOT_YET = keys({
  unread: "not_yet_unread",
  not_ones: "not_yet_not_ones",
  two_ways: "not_yet_two_ways",
  below_zero: "not_yet_below_zero",
  count_below_zero: "not_yet_count_below_zero",
  plan: "not_yet_plan",
  plan_turned: "not_yet_plan_turned",
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
export function notYet(entry) {
  const written = numbersOf(entry);
  if (!entry.text.trim()) return say(entry.counting ? (entry.gapFound ? EMPTY.count : EMPTY.alone) : EMPTY.gap, written);
  return say(ofPlan(entry) || ofWriting(entry) || (entry.counting ? ofCount(entry) : ofGap(entry)), written);
}

/**
 * All that a sentence may name, written out.
 * @param {Entry} entry
 */
function numbersOf({ larger, smaller, per, counting, text }) {
  const language = document.documentElement.lang;
  const [one = 0, other = 0] = readings(text, language, counting ? "" : say("not_ones"));
  const numbers = Object.entries({ larger, smaller, per, rest: restingPlace(smaller, larger), gap: larger - smaller, tens: per / 10, more: (larger - smaller) % 1000 });
  const written = Object.fromEntries(numbers.map(([name, number]) => [name, writeTenths(number, language)]));
  return { ...written, one: unmistakable(one, language), other: unmistakable(other, language) };
}

/**
 * What is said where a sum stands and its answer is missing.
 * @param {Entry} entry
 */
function ofPlan({ larger, smaller, per, counting, text }) {
  const plan = planOf(text, document.documentElement.lang, counting ? [larger - smaller, per, "÷"] : [larger, smaller, "−"]);
  return plan && NOT_YET[plan];
}

/**
 * What is said of an entry that is no whole answer, before anybody asks whether it is right.
 * @param {Entry} entry
 */
function ofWriting({ larger, smaller, counting, text }) {
  const language = document.documentElement.lang;
  const [tenths, other] = readings(text, language, counting ? "" : say("not_ones"));
  if (tenths === undefined) return readings(text, language).length ? NOT_YET.not_ones : NOT_YET.unread;
  if (tenths < 0) return counting ? NOT_YET.count_below_zero : NOT_YET.below_zero;
  const whole = counting || (larger % 10 === 0 && smaller % 10 === 0); // then three digits behind a sign are thousands
  return other === undefined || whole ? "" : NOT_YET.two_ways;
}

/** @param {Entry} entry */
function ofGap({ larger, smaller, text }) {
  const [answer = 0] = readings(text, document.documentElement.lang, say("not_ones"));
  return NOT_YET[gapMistake(larger, smaller, answer) || (restingPlace(smaller, larger) ? "gap_step" : "gap_look")] ?? NOT_YET.unread;
}

/**
 * Where nothing is seen, the next step is one that fits what a count is made of.
 * @param {Entry} entry
 */
function ofCount({ larger, smaller, per, text }) {
  const [answer = 0] = readings(text, document.documentElement.lang);
  const seen = countMistake(larger - smaller, per, answer);
  if (!seen) return NOT_YET[`count_step_${per}`] ?? NOT_YET.count_step;
  return NOT_YET[seen === "one_off" ? "one_out" : seen] ?? NOT_YET.unread;
}
