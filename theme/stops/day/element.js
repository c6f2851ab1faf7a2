import { CheckedAnswer } from "../../js/checked-answer.js";
import { writeTenths } from "../../js/gap-arithmetic.js";
import { LiveElement } from "../../js/live-element.js";
import { bringPlay } from "../../js/play-loader.js";
import { readings } from "../../js/read-tenths.js";
import { say } from "../../js/say.js";

/** Takes the learner's answer how far apart a day's two numbers are, and which way its plum hangs. */
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
    this.place = day.querySelector("[data-hangs]");
    this.unknown = this.place?.firstElementChild;
  }

  isRight() {
    return this.isApart() && this.chosen() === this.day.dataset.lean;
  }

  /** @returns {[string, boolean][]} */
  tries() {
    const lean = this.inputs.find(({ name }) => name === "lean");
    return lean && this.chosen() && (this.written() || !this.gap()) ? [[this.nameOf(lean), this.isRight()]] : [];
  }

  answer() {
    return this.day.querySelector("[data-answer]")?.textContent ?? "";
  }

  /** A right answer lets the plum hang where it belongs; any other takes it down. @param {string} text */
  show(text) {
    super.show(text);
    const hung = text && this.isRight() ? this.day.querySelector("details svg")?.cloneNode(true) : this.unknown;
    if (hung) this.place?.replaceChildren(hung);
  }

  async next() {
    const [larger, smaller] = this.numbers();
    const entry = { larger, smaller, per: 0, counting: false, text: this.written() };
    if (!this.isApart()) return bringPlay().then(({ notYet }) => notYet(entry), () => say("not_yet"));
    const language = document.documentElement.lang;
    const numbers = { gap: writeTenths(larger - smaller, language), most: writeTenths(Number(this.day.dataset.most) * 10, language) };
    return this.chosen() ? say("day_not_yet", numbers) : say("day_which_way", numbers);
  }

  /** Whether the subtraction is right, or done already. */
  isApart() {
    if (!this.gap()) return true;
    const [larger, smaller] = this.numbers();
    return readings(this.written(), document.documentElement.lang, say("not_ones")).includes(larger - smaller);
  }

  /** The larger and the smaller number, in tenths. */
  numbers() {
    const { first, second } = this.day.dataset;
    const both = [Number(first) * 10, Number(second) * 10];
    return [Math.max(...both), Math.min(...both)];
  }

  /** @param {HTMLInputElement} input */
  nameOf({ name }) {
    return `day ${this.day.closest("section")?.id} ${name}`;
  }

  /** The way the learner chose, or nothing. */
  chosen() {
    return this.inputs.find((input) => input.checked)?.value ?? "";
  }

  /** Where the learner writes how far apart they are; nothing where that is worked out. */
  gap() {
    return this.inputs.find((input) => input.name === "gap");
  }

  /** How far apart, as the learner wrote it. */
  written() {
    return this.gap()?.value.trim() ?? "";
  }
}
