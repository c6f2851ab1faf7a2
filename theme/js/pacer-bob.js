import { hungPlum } from "./hung-plum.js";
import { swingAt } from "./pacer-clock.js";
import { svg } from "./svg.js";

const TIE_X = 60; // units of the picture: where the thread is tied
const TIE_Y = 8;
const DROP = 66; // how long it is

/**
 * A plum on a thread that swings across once a count, by the same time as the count itself. It hangs
 * straight before the first count, and stands still where nothing may move.
 */
export class PacerBob {
  still = matchMedia("(prefers-reduced-motion: reduce)");
  frame = 0;
  hanging = hungPlum({ x: TIE_X, y: TIE_Y, drop: DROP, side: "", size: 1 });
  view = svg("svg", { class: "plums pacer-bob", viewBox: "0 0 120 128", "aria-hidden": "true" });

  /** @param {() => number} beats where the count stands, with its parts of a beat */
  constructor(beats) {
    this.beats = beats;
    this.view.append(svg("path", { class: "thread", d: `M30 ${TIE_Y - 1.5}h60v3h-60z` }), this.hanging);
  }

  swing() {
    cancelAnimationFrame(this.frame);
    if (!this.still.matches) this.frame = requestAnimationFrame(() => this.swing());
    this.lean();
  }

  halt() {
    cancelAnimationFrame(this.frame);
    this.lean();
  }

  lean() {
    const angle = this.still.matches ? 0 : swingAt(this.beats());
    this.hanging.setAttribute("transform", `rotate(${angle.toFixed(2)} ${TIE_X} ${TIE_Y})`);
  }
}
