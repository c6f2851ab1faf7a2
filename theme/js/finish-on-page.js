import { answerNames, COUNTED } from "./counted-answers.js";
import { everyPlace } from "./every-place.js";
import { stepOf } from "./finish-layout.js";
import { secondsSeen } from "./time-in-sight.js";
import { triedOf } from "./tried.js";

/** @type {Record<string, number>} */
const AS_FOUND = { no: 0, later: 1, first: 2 };
/** @type {Record<string, number>} */
const AS_TOLD = { no: 1, later: 1, first: 2 };

/** A stop that a class link does not ask for. */
const NOT_ASKED = 2;

/**
 * The places of a finish code, read from a lesson's page: its marks stand in `data-finish`.
 * @param {HTMLElement} thread
 */
export function placesOnPage(thread) {
  const [lesson = 0, numbers = 0] = (thread.dataset.finish ?? "").split(".").map(Number);
  const every = (/** @type {string} */ parts) => everyPlace(thread).flatMap((place) => [...place.querySelectorAll(/** @type {"form"} */ (parts))]);
  const stops = every(".stop").map(({ id }) => ({ id, isAsked: Boolean(thread.querySelector(`[id="${id}"]`)) }));
  const answers = every(COUNTED).flatMap((form) => answerNames(form).map((name) => ({ name, form })));
  const firsts = every("form[data-before]");
  const pairs = answers.flatMap(({ form }, at) => firsts.filter((first) => first.dataset.before === form.closest("section")?.id).map((first) => ({ form: first, at })));
  return { layout: { lesson, numbers, stops: stops.length, answers: answers.length, again: pairs.map(({ at }) => at) }, stops, answers, before: pairs.map(({ form }) => ({ name: answerNames(form)[0] ?? "", form })) };
}

/**
 * What was done so far, in these places. What a class link does not ask for is not told, whatever was done there.
 * @param {ReturnType<typeof placesOnPage>} places
 * @param {import("./store.js").Store} store of the lesson
 * @returns {import("./finish-layout.js").Finished}
 */
export function finishedSoFar({ layout, stops, answers, before }, store) {
  const told = (/** @type {{ name: string, form: HTMLFormElement }} */ { name, form }) => (form.isConnected ? triedOf(store, name) : "");
  const tried = answers.map(told);
  return {
    stops: stops.map(({ id, isAsked }) => (isAsked ? Number(store.get(`done ${id}`) !== "") : NOT_ASKED)),
    answers: tried.map((how) => AS_FOUND[how] ?? 0),
    before: before.map((first) => AS_TOLD[told(first)] ?? 0),
    after: layout.again.map((at) => AS_TOLD[tried[at] ?? ""] ?? 0),
    step: stepOf(secondsSeen(store) / 60),
  };
}
