import { hear, tellOf } from "./events.js";
import { lessonStore } from "./lesson-store.js";
import { say } from "./say.js";
import { noteTry } from "./tried.js";

/**
 * One form whose answer can be checked. It keeps what is entered, says what it sees in it, and
 * lets the learner try again as often as they like; a right answer is told of as `gap-found`.
 * What is right, and what to say of what is not, each kind of answer knows itself.
 */
export class CheckedAnswer {
  /** @param {HTMLFormElement} form */
  constructor(form) {
    this.form = form;
    this.store = lessonStore();
    this.inputs = [...form.querySelectorAll("input")];
  }

  /** @param {AbortSignal} signal */
  start(signal) {
    if (!this.inputs.length) return;
    const { form } = this;
    form.querySelector("[data-check]")?.removeAttribute("hidden");
    form.addEventListener("submit", (event) => (event.preventDefault(), this.check()), { signal });
    form.addEventListener("input", ({ target }) => target instanceof HTMLInputElement && this.keep(target), { signal });
    hear(form.closest("lesson-thread"), "lesson-cleared", () => (form.reset(), this.show("")), signal);
    for (const input of this.inputs) this.restore(input, this.store.get(this.nameOf(input)));
    if (!this.isRight()) return;
    this.note();
    this.finish();
  }

  async check() {
    this.note();
    if (this.isRight()) return this.finish();
    const asked = this.entered();
    const text = await this.next();
    if (this.entered() === asked) this.show(text); // unless another answer stands there by now
  }

  finish() {
    this.show(`${say("right")} ${this.answer()}`);
    tellOf(this.form, "gap-found");
  }

  isRight() {
    return false;
  }

  /** Keeps of each answer whether it was right at first, later or not yet. */
  note() {
    for (const [name, right] of this.tries()) noteTry(this.store, name, right);
  }

  /**
   * Each answer of the form that something is given for: what it is kept under, and whether it is right.
   * @returns {[string, boolean][]}
   */
  tries() {
    return [];
  }

  /** The sentence with the answer, for a learner who has found it. */
  answer() {
    return "";
  }

  /**
   * What to say about an answer that is not right yet.
   * @returns {string | Promise<string>}
   */
  next() {
    return "";
  }

  /** All that is entered, to see whether it is still the same. */
  entered() {
    return JSON.stringify([...new FormData(this.form)]);
  }

  /** @param {string} text */
  show(text) {
    this.form.querySelector("[data-band]")?.replaceChildren(text);
  }

  /** @param {HTMLInputElement} input */
  keep(input) {
    this.store.set(this.nameOf(input), input.value);
  }

  /**
   * @param {HTMLInputElement} input
   * @param {string} kept
   */
  restore(input, kept) {
    if (input.type === "radio") input.checked = input.value === kept;
    else input.value = kept;
  }

  /**
   * What an entry is kept under.
   * @param {HTMLInputElement} input
   */
  nameOf(input) {
    return `${this.form.id} ${input.name}`;
  }
}
