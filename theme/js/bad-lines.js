import { keys } from "./keys.js";
import { make, makeButton } from "./make.js";
import { say } from "./say.js";

/**
 * Lines that could not be read. Those one below the other that have the same fault are told together.
 *
 * @typedef {object} BadLine
 * @property {number} line counted from 1
 * @property {keyof BAD_LINE} why
 * @property {Record<string, string>} [values] for the places in its sentence
 *
 * @typedef {BadLine & { last: number }} BadLines
 */

const BAD_LINE = keys({ no_code: "codes_bad_no_code", wrong_symbol: "codes_bad_wrong", lesson: "codes_bad_lesson", numbers: "codes_bad_numbers", fetch: "codes_bad_fetch" });
/** Sentences that are seen at once; thousands take long to be laid out, and to be read. */
const SEEN_AT_ONCE = 50;

/**
 * Add a line, to those right above it where it goes with them.
 * @param {BadLines[]} told
 * @param {BadLine} bad
 */
export function noteBad(told, bad) {
  const before = told.at(-1);
  if (before && before.last === bad.line - 1 && before.why === bad.why && sameValues(before.values, bad.values)) before.last = bad.line;
  else told.push({ ...bad, last: bad.line });
}

/**
 * @param {Record<string, string> | undefined} one
 * @param {Record<string, string> | undefined} other
 */
function sameValues(one, other) {
  return JSON.stringify(one) === JSON.stringify(other);
}

/**
 * The list of them: the first ones, and a button for more.
 * @param {BadLines[]} told
 */
export function badList(told) {
  const list = make("ul", { className: "bad" });
  let shown = 0;
  const more = makeButton("", () => {
    list.append(...told.slice(shown, (shown += SEEN_AT_ONCE)).map((bad) => make("li", { textContent: badSentence(bad) })));
    const left = told.length - shown;
    more.hidden = left <= 0;
    more.textContent = say("codes_bad_more", { n: left });
  });
  more.click();
  return [list, more];
}

/** @param {BadLines} bad */
function badSentence({ line, last, why, values }) {
  const where = line === last ? say("codes_line", { line }) : say("codes_lines_from", { first: line, last });
  return say(BAD_LINE[why], { ...values, where });
}
