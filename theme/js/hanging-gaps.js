import { hear } from "./events.js";
import { LiveElement } from "./live-element.js";
import { hollowKnots, hungPlum } from "./hung-plum.js";
import { make } from "./make.js";
import { say } from "./say.js";

/** Hangs the plum of each gap that is found, and says how many there are. Without a script its knots stay hollow. */
export class HangingGaps extends LiveElement {
  static define() {
    customElements.define("hanging-gaps", this);
  }

  told = make("p", { className: "quiet" });

  /** @param {AbortSignal} signal */
  connected(signal) {
    const knots = this.querySelector(".knots");
    knots?.replaceWith(this.told, hollowKnots(knots.children.length)); // the sentence says it, and what changes
    const thread = this.closest("lesson-thread");
    const show = () => this.show();
    hear(thread, "gap-found", show, signal);
    hear(thread, "lesson-cleared", show, signal);
    thread?.addEventListener("toggle", show, { signal, capture: true });
    this.show();
  }

  show() {
    const rows = this.rows();
    const found = rows.map(isFound);
    for (const [at, knot] of this.knots().entries()) this.hang(knot, at, found[at]);
    this.toggleAttribute("data-whole", found.every(Boolean));
    const own = rows.filter((row, at) => found[at] && isAsked(row)); // what the page works out, nobody found
    this.tell(own.length, found.every(Boolean));
  }

  knots() {
    return [...this.querySelectorAll(/** @type {"circle"} */ ("svg > circle"))];
  }

  /** The rows whose gaps hang here, in their order; the total is none. */
  rows() {
    const forms = this.closest("section")?.querySelectorAll("form.gap-row") ?? [];
    return [...forms].slice(0, this.knots().length);
  }

  /**
   * @param {SVGCircleElement} knot
   * @param {number} at place of its row
   * @param {boolean} found
   */
  hang(knot, at, found) {
    const hung = knot.nextElementSibling?.matches("g") ? knot.nextElementSibling : null;
    if (found && !hung) knot.after(this.plum(knot, at));
    if (!found) hung?.remove();
  }

  /**
   * A thread with its plum: how long, and which way the leaf points, the page gives for each row.
   * @param {SVGCircleElement} knot
   * @param {number} at
   */
  plum(knot, at) {
    const { drops = "", size = "1" } = this.dataset;
    const [, drop = "0", side = ""] = drops.split(" ")[at]?.match(/^([\d.]+)(\w*)$/) ?? [];
    return hungPlum({ x: Number(knot.getAttribute("cx")), y: Number(knot.getAttribute("cy")), drop: Number(drop), side, size: Number(size) });
  }

  /** The drawing in words, from the ending, where all that hangs there hangs here; else nothing. */
  inWords() {
    const alone = document.querySelectorAll("hanging-gaps").length === 1;
    const says = document.querySelector(/** @type {"img"} */ ("lesson-ending img"))?.alt ?? "";
    return alone ? says.replace(/:.*/s, ".") : "";
  }

  /**
   * @param {number} found by the learner
   * @param {boolean} whole
   */
  tell(found, whole) {
    const text = whole && this.inWords() ? this.inWords() : found ? say("hung_found", { n: found }) : say("hung_none");
    if (this.told.textContent !== text) this.told.textContent = text;
  }
}

/**
 * Whether a row's gap is known: found, looked at, or worked out on the page from the start.
 * @param {Element} row
 */
function isFound(row) {
  return row.matches("[data-found], :has([data-working][open])") || !isAsked(row);
}

/** @param {Element} row */
function isAsked(row) {
  return row.querySelector("input") !== null;
}
