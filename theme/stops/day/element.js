import { CheckedAnswer } from "../../js/checked-answer.js";
import { LiveElement } from "../../js/live-element.js";
import { readings } from "../../js/read-tenths.js";
import { say } from "../../js/say.js";

/** Takes the learner's answer which way a day leans, and by how much. */
export class DayBalance extends LiveElement {
  static define() {
    customElements.define("day-balance", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = this.querySelector("form");
    if (form) new Leaning(form, this).start(signal);
  }
}

class Leaning extends CheckedAnswer {
  /**
   * @param {HTMLFormElement} form
   * @param {HTMLElement} day
   */
  constructor(form, day) {
    super(form);
    this.day = day;
  }

  isRight() {
    const { lean, gap } = this.day.dataset;
    const found = readings(this.written(), document.documentElement.lang, say("not_ones"));
    return this.chosen() === lean && found.includes(Math.round(Number(gap) * 10));
  }

  answer() {
    return this.day.querySelector("[data-answer]")?.textContent ?? "";
  }

  next() {
    return this.chosen() && this.written() ? say("day_not_yet") : say("day_choose");
  }

  /** @param {HTMLInputElement} input */
  nameOf({ name }) {
    return `day ${this.day.closest("section")?.id} ${name}`;
  }

  /** The way the learner chose, or nothing. */
  chosen() {
    return this.inputs.find((input) => input.checked)?.value ?? "";
  }

  /** By how much, as the learner wrote it. */
  written() {
    return this.inputs.find((input) => input.name === "gap")?.value.trim() ?? "";
  }
}
