import { announce, unseen } from "./announce.js";
import { Progress } from "./progress.js";
import { lessonStore } from "./store.js";
import { say } from "./words.js";

/**
 * Fills the knots of the stops that are done and hangs the plum where the learner is. Whatever a
 * learner did in this lesson can be cleared, which sends `lesson-cleared` to this element.
 */
export class LessonThread extends HTMLElement {
  static define() {
    customElements.define("lesson-thread", this);
  }

  store = lessonStore();
  progress = new Progress(this.store);
  /** @type {HTMLElement[]} */
  stops = [];

  connectedCallback() {
    this.stops = [...this.querySelectorAll(/** @type {"section"} */ (".stop"))];
    this.progress.stops = this.stops.map(({ id }) => id);
    this.listen();
    this.show();
    if (!document.querySelector("pause-player")) this.offerWayOn();
  }

  /** Without a video the way on from a stop leads to the next one. */
  offerWayOn() {
    for (const [index, stop] of this.stops.entries()) {
      const button = stop.querySelector("[data-go-on]");
      const next = this.stops[index + 1];
      if (button && next) {
        button.removeAttribute("hidden");
        button.addEventListener("click", () => next.querySelector("h2")?.focus());
      }
    }
  }

  listen() {
    this.on("focusin", (stop) => this.progress.isDone(stop.id) || this.visit(stop)); // the plum does not climb back
    this.on("pause-reached", (stop) => {
      this.finishWatched(this.stops.slice(0, this.stops.indexOf(stop)));
      this.visit(stop);
    });
    this.on("ended", () => this.finishWatched(this.stops));
    this.on("gap-found", (stop, row) => this.findRow(stop, row));
    this.on("toggle", (stop, details) => {
      if (details.matches("[data-working][open]")) this.findRow(stop, details);
      if (details.matches(".stop-ask > [data-reveal][open]")) this.finish(stop);
    });
    this.on("click", (stop, button) => button.closest("[data-go-on]") && this.finish(stop));
    const clear = this.querySelector("[data-clear]");
    clear?.removeAttribute("hidden");
    clear?.addEventListener("click", () => this.clear());
  }

  /**
   * Hears what happens inside a stop; on the way down, because `toggle` and `ended` do not bubble.
   * @param {string} happened
   * @param {(stop: HTMLElement, target: Element) => void} then
   */
  on(happened, then) {
    this.addEventListener(
      happened,
      ({ target }) => {
        const stop = target instanceof Element && target.closest("section");
        if (stop) then(stop, target);
      },
      true,
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
    const open = [...stop.querySelectorAll("form:not([data-found])")].filter((row) => row.querySelector("input"));
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
    this.dispatchEvent(new CustomEvent("lesson-cleared"));
    this.show();
    announce(say("cleared"));
  }

  show() {
    for (const stop of this.stops) {
      const done = this.progress.isDone(stop.id);
      const here = this.progress.here() === stop.id;
      const knot = stop.closest("li");
      knot?.toggleAttribute("data-done", done);
      knot?.toggleAttribute("aria-current", here);
      if (here) knot?.setAttribute("aria-current", "step");
      this.describe(stop, (done ? ` (${say("done")})` : "") + (here ? ` (${say("here")})` : ""));
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
