import { announce } from "./announce.js";
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

  connectedCallback() {
    this.store = lessonStore();
    /** @type {HTMLElement[]} */
    this.stops = [...this.querySelectorAll(/** @type {"section"} */ (".stop"))];
    this.progress = new Progress(
      this.stops.map(({ id }) => id),
      this.store,
    );
    this.listen();
    this.show();
  }

  listen() {
    this.on("focusin", (stop) => this.progress?.isDone(stop.id) || this.visit(stop)); // the plum does not climb back
    this.on("pause-reached", (stop) => this.reach(stop));
    this.on("gap-found", (stop, row) => this.findRow(stop, row));
    this.on("toggle", (stop, details) => {
      if (!details.hasAttribute("open")) return;
      if (details.matches("[data-working]")) this.findRow(stop, details);
      else if (stop.dataset.kind === "ask" && details.matches("[data-reveal]")) this.finish(stop);
    });
    this.on("click", (stop, button) => button.closest("[data-go-on]") && this.finish(stop));
    this.on("ended", (stop) => this.finish(stop));
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

  /** @param {HTMLElement} stop where the video has halted: what was to be watched before it, was */
  reach(stop) {
    const before = this.stops?.slice(0, this.stops.indexOf(stop)) ?? [];
    for (const watched of before.filter(({ dataset }) => dataset.kind === "watch")) this.progress?.finish(watched.id);
    this.visit(stop);
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
    this.progress?.finish(stop.id);
    this.show();
  }

  /** @param {HTMLElement} stop */
  visit(stop) {
    this.progress?.visit(stop.id);
    this.show();
  }

  clear() {
    this.store?.clear();
    for (const row of this.querySelectorAll("[data-found]")) row.removeAttribute("data-found");
    this.dispatchEvent(new CustomEvent("lesson-cleared"));
    this.show();
    announce(say("cleared"));
  }

  show() {
    for (const stop of this.stops ?? []) {
      const isDone = this.progress?.isDone(stop.id) ?? false;
      const isHere = this.progress?.here() === stop.id;
      const knot = stop.closest("li");
      knot?.toggleAttribute("data-done", isDone);
      if (isHere) knot?.setAttribute("aria-current", "step");
      else knot?.removeAttribute("aria-current");
      this.describe(stop, [isDone && say("done"), isHere && say("here")].filter(Boolean).join(", "));
    }
  }

  /**
   * Says beside a stop's heading what its knot shows.
   * @param {HTMLElement} stop
   * @param {string} text
   */
  describe(stop, text) {
    let said = stop.querySelector("[data-said]");
    if (!said) {
      said = document.createElement("span");
      said.className = "unseen";
      said.setAttribute("data-said", "");
      stop.querySelector("h2")?.append(said);
    }
    if (said.textContent !== text) said.textContent = text && ` (${text})`;
  }
}
