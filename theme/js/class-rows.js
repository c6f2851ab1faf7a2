/**
 * Codes of a class as rows, and what most of it missed. Knows no page.
 *
 * @typedef {object} LessonTold what a lesson's `finish.json` says
 * @property {string} title
 * @property {number} lesson mark of its id
 * @property {number} numbers mark of its numbers
 * @property {{ id: string, name: string }[]} stops
 * @property {{ id: string, stop: string, name: string, likely: { answer: string, means: string, says: string }[] }[]} answers
 * @property {{ id: string, name: string, again: number }[]} twice
 *
 * @typedef {object} ClassRow
 * @property {string} label
 * @property {string} code
 * @property {string} folder of the lesson
 * @property {LessonTold} told
 * @property {import("./finish-layout.js").Finished} finished
 */

/** The same words in every language, as the report reads them. */
const FOUND_AS = ["no", "later", "first"];
const TOLD_AS = ["none", "wrong", "right"];
const MINUTES_AS = ["under 5", "5 to 9", "10 to 14", "15 to 19", "20 to 29", "30 to 44", "45 to 59", "60 or more"];

/**
 * @param {LessonTold} told
 * @returns {import("./finish-layout.js").Layout}
 */
export function layoutOf({ lesson, numbers, stops, answers, twice }) {
  return { lesson, numbers, stops: stops.length, answers: answers.length, again: twice.map(({ again }) => again) };
}

/**
 * @param {ClassRow} row
 * @returns {string[]} the cells of a row, in the order of the columns
 */
export function cellsOf({ label, code, folder, told, finished }) {
  const { stops, answers, before, after, step } = finished;
  const each = (/** @type {{ id: string }[]} */ things, /** @type {number[]} */ values, /** @type {string[]} */ words) => things.map(({ id }, at) => `${id}=${words[values[at] ?? 0]}`);
  const said = (/** @type {Parameters<typeof each>} */ ...what) => each(...what).join(" ");
  const done = told.stops.filter((_, at) => stops[at] === 1).map(({ id }) => id);
  const out = told.stops.filter((_, at) => stops[at] === 2).map(({ id }) => id);
  const found = each(told.answers, answers, FOUND_AS).filter((_, at) => !out.includes(told.answers[at]?.stop ?? ""));
  return [label, folder, String(told.numbers), code, done.join(" "), found.join(" "), said(told.twice, before, TOLD_AS), said(told.twice, after, TOLD_AS), MINUTES_AS[step] ?? ""];
}

/**
 * What a code tells of what was asked for: stops and answers that a class link left out are no part of it.
 * @param {ClassRow} row
 */
export function askedOf({ told, finished: { stops, answers } }) {
  const out = told.stops.filter((_, at) => stops[at] === 2).map(({ id }) => id);
  return { stops: stops.filter((one) => one !== 2), answers: answers.filter((_, at) => !out.includes(told.answers[at]?.stop ?? "")), notAsked: out.length };
}

/**
 * The answers of a lesson that more than half of those who came to them did not have at first, most
 * missed first. Who neither found an answer nor was done with its stop has not come to it.
 * @param {ClassRow[]} rows all of one lesson
 */
export function missedBy(rows) {
  const { answers = [], stops = [] } = rows[0]?.told ?? {};
  return answers
    .map(({ name, likely, stop }, at) => {
      const done = stops.findIndex(({ id }) => id === stop);
      const came = rows.filter(({ finished }) => finished.answers[at] || finished.stops[done] === 1);
      return { name, likely, first: howMany(came, at, 2), last: howMany(came, at, 1), all: came.length };
    })
    .filter(({ first, all }) => (all - first) * 2 > all)
    .sort((one, other) => one.first / one.all - other.first / other.all || one.last / one.all - other.last / other.all);
}

/**
 * Of each question that is asked twice, how many were right before and after, of those who answered both.
 * @param {ClassRow[]} rows all of one lesson
 */
export function learnedBy(rows) {
  return (rows[0]?.told.twice ?? []).map(({ name }, at) => ({
    name,
    ...pair(rows.filter(({ finished }) => finished.before[at] && finished.after[at]), at),
  }));
}

/**
 * @param {ClassRow[]} rows
 * @param {number} at which question
 */
function pair(rows, at) {
  const right = (/** @type {"before" | "after"} */ when) => rows.filter(({ finished }) => finished[when][at] === 2).length;
  return { before: right("before"), after: right("after"), all: rows.length };
}

/**
 * @param {ClassRow[]} rows
 * @param {number} at which answer
 * @param {number} least how it was found
 */
function howMany(rows, at, least) {
  return rows.filter(({ finished }) => (finished.answers[at] ?? 0) >= least).length;
}
