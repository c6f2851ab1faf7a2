import { hear } from "./events.js";
import { LiveElement } from "./live-element.js";
import { showMoreBelow } from "./more-below.js";
import { ProjectorAnswers } from "./projector-answers.js";
import { askedOfClass } from "./projector-class.js";
import { ProjectorFilm } from "./projector-film.js";
import { askedByKey } from "./projector-keys.js";
import { offerSwitches } from "./projector-switches.js";
import { say } from "./say.js";
import { StopScreens } from "./stop-screens.js";
import { turnLabel } from "./turn-label.js";

/**
 * One stop a screen, for a class to see; a long one in several. The address bears the stop, so that
 * a reload stays. Elements that a single learner works with stay as they are written.
 */
export class ProjectorView extends LiveElement {
  static define() {
    customElements.define("projector-view", this);
  }

  /** @type {Element[]} */
  stops = [];
  here = 0;
  forClass = "";
  shown = 0;
  /** @type {Element[][]} */
  screens = [];

  /** @param {AbortSignal} signal */
  connected(signal) {
    const asked = askedOfClass(this, [...this.querySelectorAll(".projector-stops .stop")]);
    this.stops = asked.stops;
    this.forClass = asked.text;
    this.bar = /** @type {HTMLElement} */ (this.querySelector("[data-bar]"));
    document.documentElement.toggleAttribute("data-projector", true);
    keepStill(this);
    this.film = new ProjectorFilm(this, signal);
    this.hearAll(signal);
    offerSwitches(this.bar, () => this.lay(), signal);
    this.follow(false);
  }

  /** @param {AbortSignal} signal */
  hearAll(signal) {
    const press = { back: () => this.move(-1), next: () => this.move(1), answers: () => this.answer() };
    for (const [name, then] of Object.entries(press)) this.button(name)?.addEventListener("click", then, { signal });
    document.addEventListener("keydown", (event) => this.press(event), { signal });
    addEventListener("hashchange", () => this.follow(true), { signal });
    addEventListener("resize", () => this.lay(), { signal });
    this.addEventListener("toggle", () => this.tell(), { signal, capture: true });
    hear(this, "pause-reached", (stop) => this.stops.includes(stop) && this.go(this.stops.indexOf(stop), false), signal);
  }

  /** @param {KeyboardEvent} event */
  press(event) {
    const asked = document.querySelector("dialog[open]") ? undefined : askedByKey(event);
    if (!asked) return;
    event.preventDefault();
    if (asked === "answer") this.answer();
    else this.move(asked === "next" ? 1 : -1);
  }

  /** @param {number} by one screen on or back, where nothing more of this one is left; from the film, to where the class was */
  move(by) {
    if (this.film?.isShown) return this.go(this.here, true, this.shown);
    if (by > 0 && showMoreBelow()) return;
    const part = this.shown + by;
    if (part >= 0 && part < this.screens.length) this.go(this.here, true, part);
    else if (this.stops[this.here + by]) this.go(this.here + by, true, by < 0 ? Infinity : 0);
  }

  answer() {
    if (!this.film?.isShown) this.answers().turn();
    this.tell();
  }

  answers() {
    return new ProjectorAnswers(this.stops[this.here] ?? this);
  }

  /** The stop, and the screen of it, that the address names. @param {boolean} focused */
  follow(focused) {
    const named = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    const stop = this.stops.findIndex((each) => each === named || each.contains(named));
    if (stop < 0 && focused) return; // a place in no stop
    this.go(Math.max(stop, 0), focused);
    const part = this.screens.findIndex((screen) => screen.some((each) => each.contains(named)));
    if (part > 0) this.showPart(part);
  }

  /**
   * @param {number} stop
   * @param {boolean} focused whether its heading is, for who listens
   * @param {number} [part]
   */
  go(stop, focused, part = 0) {
    this.film?.show(false);
    this.here = stop;
    for (const each of this.stops) each.closest("li")?.toggleAttribute("data-shown", each === this.stops[stop]);
    this.lay();
    this.showPart(Math.min(part, this.screens.length - 1));
    history.replaceState(this.forClass ? { forClass: this.forClass } : null, "", `#${this.stops[stop]?.id}`);
    for (const opened of this.bar?.querySelectorAll("details") ?? []) opened.open = false;
    if (focused) this.stops[stop]?.querySelector("h2")?.focus({ preventScroll: true });
  }

  /** Parts the stop into screens; what stood first before stands on the one that is shown. */
  lay() {
    const stop = this.stops[this.here];
    const first = this.screens[this.shown]?.[0];
    const page = document.documentElement;
    if (!stop) return;
    this.laid = new StopScreens(stop, () => page.scrollHeight <= page.clientHeight);
    this.screens = this.laid.screens;
    this.showPart(Math.max(0, this.screens.findIndex((screen) => screen.some((each) => first && (each === first || each.contains(first))))));
  }

  /** @param {number} part */
  showPart(part) {
    this.shown = part;
    this.laid?.show(this.screens[part] ?? []);
    document.documentElement.scrollTop = 0;
    this.tell();
  }

  /** What the head and the bar say of the screen. */
  tell() {
    const { here, shown, screens, stops } = this;
    const { areAllShown, answers } = this.answers();
    const place = say("projector_place", { here: here + 1, all: stops.length });
    const of = screens.length > 1 ? ` · ${say("projector_part", { part: shown + 1, parts: screens.length })}` : "";
    this.querySelector(".projector-place")?.replaceChildren(place + of);
    this.button("back")?.toggleAttribute("disabled", !here && !shown);
    this.button("next")?.toggleAttribute("disabled", here === stops.length - 1 && shown === screens.length - 1);
    this.button("answers")?.toggleAttribute("disabled", !answers.length);
    turnLabel(this.button("answers"), Boolean(answers.length) && areAllShown);
  }

  /** @param {string} name */
  button(name) {
    return this.querySelector(`[data-bar] [data-${name}]`);
  }
}

/**
 * Elements whose scripts are for one learner stay as they are written, and the styles know it.
 * @param {Element} view
 */
function keepStill(view) {
  for (const { localName } of view.querySelectorAll(":not(:defined)")) {
    if (!/^(pause-player|film-choice|shown-timer)$/.test(localName) && !customElements.get(localName)) customElements.define(localName, class extends HTMLElement {});
  }
}
