import { announce, unseen } from "./announce.js";
import { answerNames, COUNTED } from "./counted-answers.js";
import { tellOf } from "./events.js";
import { isKept, lessonStore } from "./lesson-store.js";
import { LiveElement } from "./live-element.js";
import { Progress } from "./progress.js";
import { say } from "./say.js";
import { endsHere, goAfter } from "./show-stop.js";
import { noteLook } from "./tried.js";

/** A row that is not found yet, and that the learner sees: Blocks only leaves those out that are all numbers. */
const OPEN_ROW = "form:not([data-found], [data-blocks-only] [data-with-numbers])";

/**
 * Fills the knots of the stops that are done and hangs the plum where the learner is. Whatever a
 * learner did in this lesson can be cleared, which sends `lesson-cleared` to this element.
 */
export class LessonThread extends LiveElement {
  static define() {
    customElements.define("lesson-thread", this);
  }

  store = lessonStore();
  progress = new Progress(this.store);
  /** @type {HTMLElement[]} */
  stops = [];

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.stops = [...this.querySelectorAll(/** @type {"section"} */ (".stop"))];
    this.progress.stops = this.stops.map(({ id }) => id);
    this.listen(signal);
    this.show();
    if (isKept()) this.querySelector("[data-place-kept]")?.removeAttribute("hidden");
    if (!document.querySelector("pause-player")) this.offerWayOn(signal);
  }

  /**
   * Without a video the way on from a stop leads to the next one.
   * @param {AbortSignal} signal
   */
  offerWayOn(signal) {
    for (const [index, stop] of this.stops.entries()) {
      const button = stop.querySelector("[data-go-on]");
      if (button && (this.stops[index + 1] || endsHere(stop))) {
        button.removeAttribute("hidden");
        button.addEventListener("click", () => goAfter(stop), { signal });
      }
    }
  }

  /** @param {AbortSignal} signal */
  listen(signal) {
    const heard = {
      focusin: (/** @type {HTMLElement} */ stop) => this.progress.isDone(stop.id) || this.visit(stop), // the plum does not climb back
      "pause-reached": (/** @type {HTMLElement} */ stop) => this.reach(stop),
      ended: () => this.finishWatched(this.stops),
      "gap-found": (/** @type {HTMLElement} */ stop, /** @type {Element} */ row) => this.findRow(stop, row),
      toggle: (/** @type {HTMLElement} */ stop, /** @type {Element} */ details) => this.lookInside(stop, details),
      click: (/** @type {HTMLElement} */ stop, /** @type {Element} */ button) => button.closest("[data-go-on]") && this.finish(stop),
    };
    for (const [happened, then] of Object.entries(heard)) this.on(happened, then, signal);
    const clear = document.querySelector("[data-clear]"); // at the foot of the page, far from what is written
    clear?.removeAttribute("hidden");
    clear?.addEventListener("click", () => this.clear(), { signal });
  }

  /** @param {HTMLElement} stop where the video has halted */
  reach(stop) {
    this.finishWatched(this.stops.slice(0, this.stops.indexOf(stop)));
    this.visit(stop);
  }

  /**
   * @param {HTMLElement} stop
   * @param {Element} details that were opened or closed
   */
  lookInside(stop, details) {
    if (details.matches("[data-working][open]")) this.findRow(stop, details);
    if (details.matches(".stop-ask [data-reveal][open]")) this.finish(stop);
    if (details.matches("[data-working][open], .stop-ask [data-reveal][open]")) this.noteLooks(details.closest("form") ?? stop);
  }

  /** The answers of a form, or of a question, were looked at. @param {HTMLElement} around */
  noteLooks(around) {
    const forms = around instanceof HTMLFormElement ? [around] : [...around.querySelectorAll(/** @type {"form"} */ (COUNTED))];
    for (const name of forms.filter((form) => form.matches(COUNTED)).flatMap(answerNames)) noteLook(this.store, name);
  }

  /**
   * Hears what happens inside a stop; on the way down, because `toggle` and `ended` do not bubble.
   * @param {string} happened
   * @param {(stop: HTMLElement, target: Element) => void} then
   * @param {AbortSignal} signal
   */
  on(happened, then, signal) {
    this.addEventListener(
      happened,
      ({ target }) => {
        const stop = target instanceof Element && target.closest("section");
        if (stop) then(stop, target);
      },
      { signal, capture: true },
    );
  }

  /** @param {HTMLElement[]} stops that the video has come past */
  finishWatched(stops) {
    for (const stop of stops) if (stop.matches(".stop-watch")) this.finish(stop);
  }

  /**
   * A row is worked out, or its working was looked at; with all its rows, the stop is done.
   * @param {HTMLElement} stop
   * @param {Element} inside
   */
  findRow(stop, inside) {
    inside.closest("form")?.setAttribute("data-found", "");
    const open = [...stop.querySelectorAll(OPEN_ROW)].filter((row) => row.querySelector("input"));
    if (!open.length) this.finish(stop);
  }

  /** @param {HTMLElement} stop */
  finish(stop) {
    this.progress.finish(stop.id);
    this.show();
  }

  /** @param {HTMLElement} stop */
  visit(stop) {
    this.progress.visit(stop.id);
    this.show();
  }

  clear() {
    this.store.clear();
    for (const row of this.querySelectorAll("[data-found]")) row.removeAttribute("data-found");
    tellOf(this, "lesson-cleared");
    this.show();
    announce(say("lesson_cleared"));
  }

  show() {
    for (const stop of this.stops) {
      const done = this.progress.isDone(stop.id);
      const here = this.progress.here() === stop.id;
      const knot = stop.closest("li");
      knot?.toggleAttribute("data-done", done);
      knot?.toggleAttribute("aria-current", here);
      if (here) knot?.setAttribute("aria-current", "step");
      this.describe(stop, (done ? ` (${say("knot_done")})` : "") + (here ? ` (${say("knot_here")})` : ""));
    }
  }

  /**
   * Says beside a stop's heading what its knot shows.
   * @param {HTMLElement} stop
   * @param {string} text
   */
  describe(stop, text) {
    const heading = stop.querySelector("h2");
    if (!heading?.querySelector("span")) heading?.append(unseen());
    const said = heading?.querySelector("span");
    if (said && said.textContent !== text) said.textContent = text; // said anew only where it is new
  }
}
