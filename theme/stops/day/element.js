import { CheckedAnswer } from "../../js/checked-answer.js";
import { LiveElement } from "../../js/live-element.js";
import { say } from "../../js/say.js";

/** Takes the learner's decision which way an invented day leans. */
export class DayBalance extends LiveElement {
  static define() {
    customElements.define("day-balance", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = this.querySelector("form");
    if (form) new Decision(form, this).start(signal);
  }
}

class Decision extends CheckedAnswer {
  /**
   * @param {HTMLFormElement} form
   * @param {HTMLElement} day
   */
  constructor(form, day) {
    super(form);
    this.day = day;
  }

  isRight() {
    return this.chosen() === this.day.dataset.lean;
  }

  answer() {
    return this.day.querySelector("[data-answer]")?.textContent ?? "";
  }

  next() {
    return this.chosen() ? say("day_not_yet") : say("day_choose");
  }

  nameOf() {
    return `day ${this.day.closest("section")?.id}`;
  }

  /** The way the learner chose, or nothing. */
  chosen() {
    return this.inputs.find((input) => input.checked)?.value ?? "";
  }
}
