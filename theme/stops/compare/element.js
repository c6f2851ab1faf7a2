import { CheckedAnswer } from "../../js/checked-answer.js";
import { hear } from "../../js/events.js";
import { FoldedRow } from "../../js/folded-row.js";
import { inPlace } from "../../js/in-place.js";
import { LiveElement } from "../../js/live-element.js";
import { bringPlay } from "../../js/play-loader.js";
import { readings } from "../../js/read-tenths.js";
import { say } from "../../js/say.js";

/** Takes answers for the rows of a comparison. */
export class GapCalculator extends LiveElement {
  static define() {
    customElements.define("gap-calculator", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    for (const form of this.querySelectorAll("form")) new Row(form).start(signal);
  }
}

/** One row: its numbers in tenths, and an entry for the gap, for the count, or for both. */
class Row extends CheckedAnswer {
  folded = new FoldedRow(this.form);

  /** @param {AbortSignal} signal */
  start(signal) {
    this.leaving = signal;
    super.start(signal);
    hear(this.form.closest("lesson-thread"), "lesson-cleared", () => this.mend(), signal);
    if (this.inputs.length && this.isRight()) this.folded.fold(); // found at an earlier visit
  }

  finish() {
    super.finish();
    this.form.setAttribute("data-right", "");
    if (this.leaving && !this.form.contains(this.folded.line)) this.folded.waitForLeaving(this.leaving);
  }

  /** Something else stands there than what was found. */
  mend() {
    this.form.removeAttribute("data-right");
    this.folded.unfold();
  }

  /** The first entry that is not right yet. */
  open() {
    return this.inputs.find((input) => !this.readingsOf(input).includes(this.number(input.name)));
  }

  /** @returns {[string, boolean][]} */
  tries() {
    const read = this.inputs.filter((input) => this.readingsOf(input).length);
    return read.map((input) => [this.nameOf(input), this.readingsOf(input).includes(this.number(input.name))]);
  }

  /** The numbers that an entry may be read as. @param {HTMLInputElement} input */
  readingsOf({ name, value }) {
    return readings(value, document.documentElement.lang, name === "gap" ? say("not_ones") : "");
  }

  isRight() {
    return !this.open();
  }

  answer() {
    const told = document.documentElement.matches("[data-blocks-only]") ? ".working" : ".working + p"; // the calculation has no units
    return this.form.querySelector(told)?.textContent?.trim() ?? "";
  }

  /** @param {HTMLInputElement} input */
  keep(input) {
    super.keep(input);
    if (!this.isRight()) inPlace(input, () => this.mend());
    bringPlay().catch(() => {}); // it will be here when the answer is checked
  }

  async next() {
    const open = this.open();
    if (this.form.querySelector("input:focus")) open?.focus(); // from the button, a phone's keyboard would cover the sentence
    const [smaller = 0, larger = 0] = [this.number("first"), this.number("second")].sort((one, other) => one - other);
    const entry = { larger, smaller, per: this.number("per"), counting: open?.name === "count", gapFound: "gap" in this.form.dataset, text: open?.value ?? "" };
    return bringPlay().then(({ notYet }) => notYet(entry), () => say("not_yet")); // without a connection, the plain sentence
  }

  /** @param {string} name of a number that the page gives */
  number(name) {
    return Math.round(Number(this.form.dataset[name]) * 10);
  }
}
