import { decode, encode } from "./base32.js";

/**
 * A finish code, as in generator/compute/finish_code.py: what a learner did in a lesson as some
 * symbols, and back again. Knows no page.
 *
 * @typedef {object} Layout what a code of a lesson tells, and in which order
 * @property {number} lesson mark of the lesson's id
 * @property {number} numbers mark of its stops and answers
 * @property {number} stops how many
 * @property {number} answers how many count
 * @property {number[]} again of each question that is asked twice, which of the answers is the second one
 *
 * @typedef {object} Finished
 * @property {number[]} stops 1 for each that is done, 2 for each that a class link did not ask for
 * @property {number[]} answers 0 not right, 1 right later, 2 right at first
 * @property {number[]} before 0 not answered, 1 wrong, 2 right
 * @property {number[]} after
 * @property {number} step of the minutes
 */

const ONE_MARK = 4096;
/** Where each step of the minutes begins. */
const STEPS = [0, 5, 10, 15, 20, 30, 45, 60];
/** Every code is a multiple of it; generator/compute/finish_layout.py says why. */
const SPREAD = 33n;

/** @param {number} minutes whole or broken */
export function stepOf(minutes) {
  return STEPS.filter((begins) => begins <= minutes).length - 1;
}

/**
 * @param {Layout} layout
 * @param {number} ways of each stop: 3 where some were not asked for
 * @returns {number[]} how many values each place may have, the first one counting least
 */
function basesOf({ stops, answers, again }, ways) {
  const pairs = again.map(() => 3);
  return [ONE_MARK, ONE_MARK, STEPS.length, ...Array(stops).fill(ways), ...Array(answers).fill(3), ...pairs, ...pairs];
}

/**
 * How many symbols a code has without its check symbol; where some stops were not asked for it is
 * longer, and known by that.
 * @param {Layout} layout
 * @param {number} ways of each stop
 * @returns {number}
 */
export function lengthOf(layout, ways = 2) {
  const most = basesOf(layout, ways).reduce((product, base) => product * BigInt(base), SPREAD) - 1n;
  let length = ways === 2 ? 1 : lengthOf(layout) + 1;
  while (most >= 32n ** BigInt(length)) length++;
  return length;
}

/**
 * @param {Finished} finished
 * @param {Layout} layout
 */
export function finishCode({ stops, answers, before, after, step }, layout) {
  const values = [layout.lesson, layout.numbers, step, ...stops, ...answers, ...before, ...after];
  const ways = stops.includes(2) ? 3 : 2;
  const number = basesOf(layout, ways).reduceRight((sum, base, at) => sum * BigInt(base) + BigInt(values[at] ?? 0), 0n);
  return encode(number * SPREAD, lengthOf(layout, ways));
}

/**
 * The marks that a code begins with; or why it is no code.
 * @param {string} code
 * @returns {{ lesson: number, numbers: number } | "no_code" | "wrong_symbol"}
 */
export function marksOf(code) {
  const read = decode(code);
  if (read === "no_symbol") return "no_code";
  if (read === "wrong_check" || read.number % SPREAD) return "wrong_symbol";
  const number = read.number / SPREAD;
  return { lesson: Number(number % BigInt(ONE_MARK)), numbers: Number((number / BigInt(ONE_MARK)) % BigInt(ONE_MARK)) };
}

/**
 * What a code of this lesson with these numbers tells; nothing where its places contradict one another.
 * @param {string} code
 * @param {Layout} layout
 * @returns {Finished | undefined}
 */
export function readFinish(code, layout) {
  const read = decode(code);
  const ways = [2, 3].find((each) => typeof read === "object" && read.length === lengthOf(layout, each));
  if (typeof read === "string" || !ways) return undefined;
  let number = read.number / SPREAD;
  const values = basesOf(layout, ways).map((base) => {
    const value = Number(number % BigInt(base));
    number /= BigInt(base);
    return value;
  });
  const [, , step = 0] = values.splice(0, 3);
  const [stops, answers] = [values.splice(0, layout.stops), values.splice(0, layout.answers)];
  const [before, after] = [values.splice(0, layout.again.length), values];
  const finished = { stops, answers, before, after, step };
  return number || stops.includes(2) !== (ways === 3) || !agrees(finished, layout) ? undefined : finished;
}

/**
 * Whether what was right after is what was found at first, and nothing was found that was not answered.
 * @param {Finished} finished
 * @param {Layout} layout
 */
function agrees({ answers, after }, { again }) {
  return again.every((at, pair) => (after[pair] === 2) === (answers[at] === 2) && (after[pair] !== 0 || answers[at] === 0));
}
