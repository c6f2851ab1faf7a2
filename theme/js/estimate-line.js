import { hear } from "./events.js";
import { writeTenths } from "./gap-arithmetic.js";
import { lessonStore } from "./lesson-store.js";
import { LiveElement } from "./live-element.js";
import { readings } from "./read-tenths.js";
import { say } from "./say.js";

const LEFT = 24; // units of the picture from its edge to 0
const LENGTH = 252; // and from 0 to the last number

/**
 * Lays the number a learner said on a line, and the gap beside it once it is found. How far apart
 * both are is all that is told: no estimate is right or wrong.
 */
export class EstimateLine extends LiveElement {
  static define() {
    customElements.define("estimate-line", this);
  }

  store = lessonStore();

  /** @param {AbortSignal} signal */
  connected(signal) {
    const thread = this.closest("lesson-thread");
    const kept = this.store.get(this.id);
    for (const input of this.inputs()) {
      if (input.type === "radio") input.checked = input.value === kept;
      else input.value = kept;
    }
    this.addEventListener("input", () => (this.store.set(this.id, this.written()), this.show()), { signal });
    hear(thread, "gap-found", () => this.show(), signal);
    hear(thread, "lesson-cleared", () => this.clear(), signal);
    thread?.addEventListener("toggle", () => this.show(), { signal, capture: true });
    this.show();
  }

  show() {
    const said = this.said();
    const gap = this.isFound() ? Number(this.dataset.gap) * 10 : null;
    this.lay("[data-said]", said);
    this.lay("[data-found]", said === null ? null : gap);
    this.tell(said === null || gap === null ? "" : this.compared(said, gap));
  }

  /**
   * How far an estimate lies from the gap.
   * @param {number} said tenths
   * @param {number} gap tenths
   */
  compared(said, gap) {
    const write = (/** @type {number} */ tenths) => writeTenths(tenths, document.documentElement.lang);
    if (said === gap) return say("estimate_same", { said: write(said) });
    return say("estimate_apart", { said: write(said), gap: write(gap), apart: write(Math.abs(said - gap)) });
  }

  /** Whether the gap is known by now: its row is right, or its working was looked at. */
  isFound() {
    return document.getElementById(this.dataset.row ?? "")?.matches("[data-found], :has([data-working][open])") ?? false;
  }

  /** The number that was said, in tenths; nothing while there is none that can be read. */
  said() {
    const [tenths = -1] = readings(this.written(), document.documentElement.lang);
    return tenths < 0 ? null : tenths;
  }

  written() {
    return this.inputs().find(({ type, checked }) => type !== "radio" || checked)?.value ?? "";
  }

  inputs() {
    return [...this.querySelectorAll("input")];
  }

  /**
   * Puts a mark on the line; beyond its end it stays at the end.
   * @param {string} mark
   * @param {number | null} tenths
   */
  lay(mark, tenths) {
    const share = Math.min((tenths ?? 0) / (Number(this.dataset.end) * 10), 1);
    const drawn = this.querySelector(mark);
    drawn?.setAttribute("transform", `translate(${LEFT + LENGTH * share} 0)`);
    drawn?.setAttribute("display", tenths === null ? "none" : "inline");
  }

  /** @param {string} text */
  tell(text) {
    const band = this.querySelector("[data-band]");
    if (band && band.textContent !== text) band.textContent = text; // said anew only where it is new
  }

  clear() {
    for (const input of this.inputs()) {
      if (input.type === "radio") input.checked = false;
      else input.value = "";
    }
    this.show();
  }
}
