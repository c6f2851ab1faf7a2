import { foldedWords, isWanted, readChoice, writeChoice } from "./lesson-choice.js";
import { LiveElement } from "./live-element.js";
import { say } from "./say.js";

/**
 * A lesson in the list, where it stands, and what it is chosen by.
 *
 * @typedef {object} ListedRow
 * @property {HTMLElement} row
 * @property {HTMLElement | null} group what it stands in with others that compare the same
 * @property {import("./lesson-choice.js").Listed} lesson
 */

/**
 * Narrows the list of lessons by what is chosen beside it. The choice stands in the address, so
 * that a link to it can be sent.
 */
export class LessonFilter extends LiveElement {
  static define() {
    customElements.define("lesson-filter", this);
  }

  /** @type {ListedRow[]} */
  rows = [];
  /** @type {HTMLFormElement | null} */
  form = null;

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.form = this.querySelector("form");
    if (!this.form) return;
    this.form.hidden = false;
    this.rows = [...document.querySelectorAll(/** @type {"li"} */ (".lessons > li"))].map(listed);
    this.form.addEventListener("focusin", ({ target }) => target instanceof HTMLInputElement && this.readWords(), { signal });
    this.form.addEventListener("input", () => this.show(), { signal });
    this.form.addEventListener("change", () => this.putAddress(), { signal }); // not at each letter: browsers limit how often
    this.form.addEventListener("submit", (event) => event.preventDefault(), { signal });
    this.allAgain?.addEventListener("click", () => this.clear(), { signal });
    addEventListener("hashchange", () => this.take(), { signal });
    this.take();
  }

  /** The button that takes every choice back. */
  get allAgain() {
    return this.querySelector(/** @type {"button"} */ ("[data-all-again]"));
  }

  /** What can be chosen by. */
  get fields() {
    return [...this.querySelectorAll(/** @type {"input"} */ ("select, input"))];
  }

  putAddress() {
    history.replaceState(null, "", `#${writeChoice(this.chosen())}`);
  }

  /** Takes the choice from the address; a value that is not offered chooses nothing. */
  take() {
    const wanted = readChoice(location.hash);
    for (const field of this.fields) {
      const value = wanted[field.name] ?? "";
      if (field.type === "checkbox") field.checked = value === field.value;
      else field.value = value;
      if (!field.value) field.value = ""; // of a choice that is not offered, the one that chooses all
    }
    this.show();
  }

  /** Takes every choice back; the button goes with them, so the focus is led to where one chooses anew. */
  clear() {
    this.form?.reset();
    this.putAddress();
    this.show();
    this.fields[0]?.focus();
  }

  chosen() {
    return /** @type {Record<string, string>} */ (Object.fromEntries(new FormData(this.form ?? undefined)));
  }

  /** Before the first letter where somebody comes to the field, so that none waits for it. */
  readWords() {
    for (const { row, lesson } of this.rows) lesson.words ||= wordsOf(row);
  }

  show() {
    const wanted = this.chosen();
    if (wanted.word) this.readWords();
    const shown = this.rows.filter(({ row, lesson }) => !(row.hidden = !isWanted(lesson, wanted)));
    const groups = new Set(shown.map(({ group }) => group));
    for (const group of new Set(this.rows.map(({ group }) => group))) if (group) group.hidden = !groups.has(group);
    if (this.allAgain) this.allAgain.hidden = !writeChoice(wanted);
    const told = this.querySelector("[role=status]");
    if (told) told.textContent = shown.length ? say("lessons", { n: shown.length }) : say("lessons_none");
  }
}

/**
 * @param {HTMLElement} row
 * @returns {ListedRow}
 */
function listed(row) {
  const { grades = "", minutes = "", topics = "", languages = "" } = row.dataset;
  const lesson = { grades: ` ${grades} `, minutes: Number(minutes), topics: ` ${topics} `, languages: ` ${languages} `, words: "" };
  return { row, group: /** @type {HTMLElement | null} */ (row.closest("[data-group]")), lesson };
}

/**
 * What a lesson is found by: title, summary, and what it compares.
 * @param {HTMLElement} row
 */
function wordsOf(row) {
  return foldedWords([...row.querySelectorAll("[data-found-by]")].map(({ textContent }) => textContent).join(" "));
}
