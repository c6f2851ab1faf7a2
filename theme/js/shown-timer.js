import { LiveElement } from "./live-element.js";
import { leftAt, setTo, shownSeconds, startedAt, stoodAt } from "./time-left.js";
import { clock } from "./transcript-lines.js";
import { turnLabel } from "./turn-label.js";

/**
 * A timer that only shows: it makes no sound, moves nothing on and measures nobody. At nothing it
 * stands there until somebody sets or starts it again.
 */
export class ShownTimer extends LiveElement {
  static define() {
    customElements.define("shown-timer", this);
  }

  timer = setTo(0);
  waiting = 0;

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.time = this.querySelector("[role=timer]");
    this.button = this.querySelector("button");
    this.choice = this.querySelector("select");
    this.choice?.addEventListener("change", () => this.set(), { signal });
    this.button?.addEventListener("click", () => this.turn(), { signal });
    signal.addEventListener("abort", () => clearTimeout(this.waiting));
    this.set();
  }

  set() {
    this.timer = setTo(Number(this.choice?.value));
    this.show();
  }

  turn() {
    const now = performance.now();
    if (!leftAt(this.timer, now)) this.set();
    this.timer = this.timer.since === null ? startedAt(this.timer, now) : stoodAt(this.timer, now);
    this.show();
  }

  show() {
    const now = performance.now();
    const left = leftAt(this.timer, now);
    if (!left) this.timer = stoodAt(this.timer, now);
    const runs = this.timer.since !== null;
    if (this.time) this.time.textContent = clock(shownSeconds(this.timer, now));
    turnLabel(this.button, runs);
    clearTimeout(this.waiting);
    if (runs) this.waiting = window.setTimeout(() => this.show(), left % 1000 || 1000);
  }
}
