import { announce } from "./announce.js";
import { inPlace } from "./in-place.js";
import { make } from "./make.js";
import { say } from "./say.js";

/**
 * A found row as one line: its foods and how the gap and the count came out. It folds once the
 * learner is elsewhere, never under their focus, and the line opens it again.
 */
export class FoldedRow {
  /** @param {HTMLFormElement} form */
  constructor(form) {
    /** @type {FoldedRow | undefined} */
    this.example = undefined;
    this.form = form;
    this.line = make("button", { type: "button", className: "found-row", onclick: () => this.turn() });
  }

  /**
   * Folds the row as soon as the learner does something outside of it.
   * @param {AbortSignal} signal
   */
  waitForLeaving(signal) {
    const leaving = new AbortController();
    const left = (/** @type {Event} */ { target }) => {
      if (!(target instanceof Element) || this.form.contains(target)) return;
      leaving.abort();
      if (!this.form.matches("[data-right]")) return; // mended into something else meanwhile
      inPlace(target, () => this.fold());
      announce(say("row_folded", { foods: this.names() }));
    };
    for (const happened of ["focusin", "click"]) document.addEventListener(happened, left, { signal: AbortSignal.any([signal, leaving.signal]) });
  }

  /** A row before it that was worked out to be followed has done its part by then, and folds as well. */
  fold() {
    const before = this.form.previousElementSibling;
    if (before instanceof HTMLFormElement && !before.querySelector("input, .found-row")) {
      this.example = new FoldedRow(before);
      this.example.fold();
    }
    this.line.replaceChildren(make("b", {}, this.names()), make("span", {}, this.steps()));
    this.form.prepend(this.line);
    this.show(true);
  }

  /** Back to a row like all others. */
  unfold() {
    this.example?.unfold();
    this.show(false);
    this.line.remove();
  }

  turn() {
    this.show(!this.form.matches("[data-folded]"));
  }

  /** @param {boolean} folded */
  show(folded) {
    this.form.toggleAttribute("data-folded", folded);
    this.line.setAttribute("aria-expanded", String(!folded));
  }

  /** The foods, or what stands at the top where a row is no pair of foods. */
  names() {
    return [...this.form.querySelectorAll("[data-food], h3")].map(({ textContent }) => textContent).join(" · ");
  }

  /** The subtraction, and the division where a count is asked for; a line ends between both, or after a comma. */
  steps() {
    const lines = [...this.form.querySelectorAll(".working li")].slice(this.form.dataset.count ? -2 : -1);
    return lines.map(({ textContent }) => textContent?.replace(/ ?([−÷=]) ?/g, "\u00a0$1\u00a0")).join("\u2003");
  }
}
