import { button } from "./button.js";
import { make } from "./make.js";
import { say } from "./say.js";
import { stopNamed } from "./stop-named.js";

/**
 * Which stops a class link shows. A stop that is left out waits in a template at its place, where
 * nothing finds it but who asks for all of a lesson's stops.
 *
 * @typedef {object} Chosen
 * @property {number} some how many stops are shown
 * @property {number} all how many the lesson has
 * @property {number} gone how many the link names and the lesson does not have
 */

/**
 * Leaves out every stop that a link does not name; none where it names none that is there.
 * @param {HTMLElement} thread
 * @param {string[]} names
 * @returns {Chosen}
 */
export function leaveOthersOut(thread, names) {
  const all = [...thread.querySelectorAll(/** @type {"section"} */ (".stop"))];
  const asked = names.flatMap((name) => stopNamed(all, name) ?? []);
  const gone = names.length - asked.length;
  const shown = asked.length ? all.filter((stop) => asked.includes(stop)) : all;
  const [first] = shown;
  if (first && shown.length < all.length) {
    keepFilm(thread, all, first);
    for (const stop of all) if (!shown.includes(stop)) leaveOut(stop);
    const last = shown.at(-1) ?? first;
    last.toggleAttribute("data-last", last !== all.at(-1));
    mend(thread, last);
  }
  return { some: shown.length, all: all.length, gone };
}

/** @param {HTMLElement} stop */
function leaveOut(stop) {
  const place = stop.closest("li");
  const waiting = make("template");
  waiting.dataset.leftOut = "";
  waiting.content.append(stop);
  place?.append(waiting);
  place?.setAttribute("hidden", "");
}

/**
 * The film stays, with what stands around it: it is what the lesson is told in. It plays whole, and a
 * button begins it where the first chosen stop's own part of it begins.
 * @param {HTMLElement} thread
 * @param {HTMLElement[]} all
 * @param {HTMLElement} first
 */
function keepFilm(thread, all, first) {
  const film = thread.querySelector("pause-player, .stop-watch [rel='noreferrer noopener']");
  const place = film?.closest("li");
  if (film && place && place !== first.closest("li")) thread.querySelector(".opening")?.append(film.closest("p") ?? film, ...place.querySelectorAll(":scope > .beside"));
  const at = Number(first.dataset.at || 0);
  const before = all.slice(0, all.indexOf(first)).filter(({ dataset }) => dataset.at && Number(dataset.at) < at);
  const begins = before.at(-1);
  if (film?.matches("pause-player") && begins && Number(begins.dataset.at)) film.querySelector("video")?.after(partOfFilm(begins));
}

/** @param {HTMLElement} begins the stop with whose pause the part begins */
function partOfFilm(begins) {
  const at = begins.querySelector(".time")?.textContent ?? "";
  const play = button(say("play_from", { at }));
  play.classList.add("filled");
  play.dataset.playFrom = begins.dataset.at;
  play.hidden = true; // until the player is there
  return make("p", {}, play);
}

/**
 * What spoke of the stops that are left out.
 * @param {HTMLElement} thread
 * @param {HTMLElement} last stop that is shown
 */
function mend(thread, last) {
  const out = [...thread.querySelectorAll("template[data-left-out]")].map((waiting) => /** @type {HTMLTemplateElement} */ (waiting).content);
  const ids = new Set(out.map(({ firstElementChild }) => firstElementChild?.id));
  for (const link of thread.querySelectorAll("a[href^='#']:not([data-play-from])")) if (ids.has(link.getAttribute("href")?.slice(1))) link.replaceWith(...link.childNodes);
  // The drawing at the end has all gaps of the lesson.
  if (out.some((stop) => stop.querySelector("hanging-gaps"))) thread.querySelector("lesson-ending > details")?.remove();
  const end = thread.querySelector("lesson-ending")?.closest("li");
  (end && !last.matches("#parting") ? end : last.closest("li"))?.setAttribute("data-ends", "");
}
