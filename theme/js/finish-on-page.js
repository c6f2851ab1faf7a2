import { answerNames, COUNTED } from "./counted-answers.js";
import { stepOf } from "./finish-layout.js";
import { secondsSeen } from "./time-in-sight.js";
import { triedOf } from "./tried.js";

/** @type {Record<string, number>} */
const AS_FOUND = { no: 0, later: 1, first: 2 };
/** @type {Record<string, number>} */
const AS_TOLD = { no: 1, later: 1, first: 2 };

/**
 * The places of a finish code, read from a lesson's page: its marks stand in `data-finish`.
 * @param {HTMLElement} thread
 */
export function placesOnPage(thread) {
  const [lesson = 0, numbers = 0] = (thread.dataset.finish ?? "").split(".").map(Number);
  const stops = [...thread.querySelectorAll(".stop")].map(({ id }) => id);
  const forms = [...thread.querySelectorAll(/** @type {"form"} */ (COUNTED))];
  const answers = forms.flatMap((form) => answerNames(form).map((name) => ({ name, stop: form.closest("section")?.id })));
  const firsts = [...thread.querySelectorAll(/** @type {"form"} */ ("form[data-before]"))];
  const pairs = answers.flatMap(({ stop }, at) => firsts.filter((first) => first.dataset.before === stop).map((first) => ({ before: answerNames(first)[0] ?? "", at })));
  return { layout: { lesson, numbers, stops: stops.length, answers: answers.length, again: pairs.map(({ at }) => at) }, stops, answers: answers.map(({ name }) => name), before: pairs.map(({ before }) => before) };
}

/**
 * What was done so far, in these places.
 * @param {ReturnType<typeof placesOnPage>} places
 * @param {import("./store.js").Store} store of the lesson
 * @returns {import("./finish-layout.js").Finished}
 */
export function finishedSoFar({ layout, stops, answers, before }, store) {
  const tried = answers.map((name) => triedOf(store, name));
  return {
    stops: stops.map((stop) => (store.get(`done ${stop}`) ? 1 : 0)),
    answers: tried.map((how) => AS_FOUND[how] ?? 0),
    before: before.map((name) => AS_TOLD[triedOf(store, name)] ?? 0),
    after: layout.again.map((at) => AS_TOLD[tried[at] ?? ""] ?? 0),
    step: stepOf(secondsSeen(store) / 60),
  };
}
