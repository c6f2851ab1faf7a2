import { readTenths } from "../../js/gap-arithmetic.js";
import { bringPlay } from "../../js/play-loader.js";
import { lessonStore } from "../../js/store.js";
import { say } from "../../js/words.js";

/**
 * Takes answers for the rows of a comparison, says what it sees in them, and lets the learner try
 * again as often as they like. A row that is complete sends up `gap-found`.
 */
export class GapCalculator extends HTMLElement {
  static define() {
    customElements.define("gap-calculator", this);
  }

  connectedCallback() {
    for (const form of this.querySelectorAll("form")) new Row(form).start();
  }
}

/** One row: its numbers in tenths, its entries and its band. */
class Row {
  /** @param {HTMLFormElement} form */
  constructor(form) {
    this.form = form;
    this.language = document.documentElement.lang;
    this.store = lessonStore();
    this.inputs = [...form.querySelectorAll("input")];
    const first = this.number("first");
    const second = this.number("second");
    this.larger = Math.max(first, second);
    this.smaller = Math.min(first, second);
    this.per = this.number("per");
  }

  start() {
    if (!this.inputs.length) return;
    this.form.querySelector("[data-check]")?.removeAttribute("hidden");
    this.form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.check();
    });
    this.form.closest("lesson-thread")?.addEventListener("lesson-cleared", () => {
      this.form.reset();
      this.show("");
    });
    for (const input of this.inputs) {
      input.value = this.store.get(this.nameOf(input));
      input.addEventListener("input", () => {
        this.store.set(this.nameOf(input), input.value);
        bringPlay().catch(() => {}); // it will be here when the answer is checked
      });
    }
    if (!this.open()) this.finish();
  }

  /** The first entry that is not right yet. */
  open() {
    return this.inputs.find((input) => !this.isRight(input));
  }

  check() {
    const open = this.open();
    if (!open) return this.finish();
    const { value } = open;
    if (this.form.querySelector("input:focus")) open.focus(); // from the button, a phone's keyboard would cover the sentence
    this.next(open).then((text) => open.value === value && this.show(text)); // unless another answer stands there by now
  }

  finish() {
    const answer = this.form.querySelector(".working + p")?.textContent ?? "";
    this.show(`${say("right")} ${answer}`);
    this.form.dispatchEvent(new CustomEvent("gap-found", { bubbles: true }));
  }

  /**
   * What to say about an entry that is not right yet: the script that comes for it knows.
   * @param {HTMLInputElement} input
   */
  async next({ name, value }) {
    const { larger, smaller, per } = this;
    const detail = { larger, smaller, per, text: value, counting: name === "count", says: say("not_yet") };
    await bringPlay().catch(() => {}); // without a connection, the plain sentence
    this.form.dispatchEvent(new CustomEvent("not-yet", { bubbles: true, detail }));
    return detail.says;
  }

  /** @param {string} text */
  show(text) {
    this.form.querySelector("[data-band]")?.replaceChildren(text);
  }

  /** @param {HTMLInputElement} input */
  isRight(input) {
    return this.read(input) === this.number(input.name);
  }

  /** @param {HTMLInputElement} input */
  read(input) {
    return readTenths(input.value, this.language);
  }

  /** @param {string} name of a number that the page gives */
  number(name) {
    return Math.round(Number(this.form.dataset[name]) * 10);
  }

  /** @param {HTMLInputElement} input */
  nameOf(input) {
    return `${this.form.id} ${input.name}`;
  }
}
