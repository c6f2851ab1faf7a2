import { keys } from "./keys.js";
import { askedOf, learnedBy, missedBy } from "./class-rows.js";
import { make } from "./make.js";
import { say } from "./say.js";

const HEAD = keys({ label: "codes_label", lesson: "codes_lesson", stops: "codes_stops", first: "codes_first", last: "codes_last", twice: "codes_twice", minutes: "codes_minutes" });
/** @type {Record<number, string> & { 0: string }} */
const SAID = keys({ 0: "codes_none", 1: "codes_wrong", 2: "codes_right" });
/** @type {Record<number, string> & { 0: string }} */
const SAID_MINUTES = keys({ 0: "codes_minutes_0", 1: "codes_minutes_1", 2: "codes_minutes_2", 3: "codes_minutes_3", 4: "codes_minutes_4", 5: "codes_minutes_5", 6: "codes_minutes_6", 7: "codes_minutes_7" });

/** @typedef {import("./class-rows.js").ClassRow} ClassRow */

/** An empty table of a class. */
export function classTable() {
  const heads = Object.values(HEAD).map((key) => make("th", { scope: "col", textContent: say(key) }));
  return make("table", {}, make("caption", { textContent: say("codes_table") }), make("thead", {}, make("tr", {}, ...heads)), make("tbody"));
}

/**
 * A row of it, in the order in which the codes were typed: children are not ranked.
 * @param {ClassRow} row
 */
export function tableRow(row) {
  const { label, told } = row;
  const { before, after, step } = row.finished;
  const { stops, answers, notAsked } = askedOf(row);
  const of = (/** @type {number[]} */ values, least = 1) => say("codes_of", { some: values.filter((one) => one >= least).length, all: values.length });
  const twice = told.twice.map((_, at) => say("codes_then", { before: say(SAID[before[at] ?? 0] ?? SAID[0]), after: say(SAID[after[at] ?? 0] ?? SAID[0]) }));
  const done = [of(stops), ...(notAsked ? [say("codes_not_asked", { n: notAsked })] : [])].join("; ");
  const cells = [told.title, done, of(answers, 2), of(answers), twice.join("; "), say(SAID_MINUTES[step] ?? SAID_MINUTES[0])];
  return make("tr", {}, labelCell(label), ...cells.map((textContent) => make("td", { textContent })));
}

/**
 * A row of a code that fits several lessons: she says which it is.
 * @param {ClassRow[]} fits one for each lesson
 * @param {(row: ClassRow | undefined) => void} chosen
 */
export function choiceRow(fits, chosen) {
  const titles = fits.map(({ told }) => make("option", { textContent: told.title }));
  const choice = make("select", { onchange: () => chosen(fits[choice.selectedIndex - 1]) }, make("option", { textContent: say("codes_choose") }), ...titles);
  choice.setAttribute("aria-label", say(HEAD.lesson));
  const open = make("td", { colSpan: Object.keys(HEAD).length - 1 }, choice);
  return make("tr", {}, labelCell(fits[0]?.label ?? ""), open);
}

/** A label has a direction of its own, and turns no cell beside it. @param {string} label */
function labelCell(label) {
  return make("th", { scope: "row" }, make("bdi", { textContent: label }));
}

/**
 * What most of the class missed in a lesson, and what to say of it.
 * @param {ClassRow[]} rows all of one lesson
 */
export function lessonSummary(rows) {
  const missed = missedBy(rows);
  const learned = learnedBy(rows).map(({ name, before, after, all }) => make("p", { textContent: say("codes_learned", { name, before, after, all }) }));
  const none = make("p", { textContent: say("codes_missed_none") });
  return make("section", {}, make("h3", { textContent: rows[0]?.told.title ?? "" }), ...learned, ...(missed.length ? missed.map(oneMissed) : [none]));
}

/** @param {ReturnType<typeof missedBy>[number]} missed */
function oneMissed({ name, likely, first, last, all }) {
  const said = likely.map(({ answer, means, says }) => make("li", {}, [answer, means].filter(Boolean).join(": "), ...(says ? [" ", say("notes_say_next", { says })] : [])));
  const counts = make("p", { textContent: say("codes_missed_by", { first, last, all }) });
  const [likeliest, ...rest] = said;
  const more = rest.length ? [make("details", {}, make("summary", { textContent: say("notes_likely") }), make("ul", {}, ...rest))] : [];
  return make("div", {}, make("h4", { textContent: name }), counts, ...(likeliest ? [make("ul", {}, likeliest)] : []), ...more);
}
