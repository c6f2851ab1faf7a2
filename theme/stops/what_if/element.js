import { hear, tellOf } from "../../js/events.js";
import { lessonStore } from "../../js/lesson-store.js";
import { LiveElement } from "../../js/live-element.js";
import { say } from "../../js/say.js";

/**
 * Takes a change and a guess, and shows which way the gap went. A guess is never right or wrong: the
 * page says what it was and what happened. Each change keeps the guess that was made for it.
 */
export class WhatIf extends LiveElement {
  static define() {
    customElements.define("what-if", this);
  }

  store = lessonStore();
  /** @type {HTMLFormElement | null} */
  form = null;
  told = false;

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = (this.form = this.querySelector("form"));
    if (!form) return;
    form.querySelector("[data-check]")?.removeAttribute("hidden");
    form.addEventListener("submit", (event) => (event.preventDefault(), this.look()), { signal });
    form.addEventListener("input", ({ target }) => target instanceof HTMLInputElement && this.choose(target), { signal });
    hear(form.closest("lesson-thread"), "lesson-cleared", () => this.forget(), signal);
    this.restore();
  }

  /** Both are chosen: says what was guessed and what happened, and opens the change. */
  look() {
    const [change, way] = [this.chosen("change"), this.chosen("way")];
    if (!change || !way) return this.show(say("what_if_choose"));
    this.store.set(this.nameOf(`guess ${change}`), way);
    this.tell(change, way);
    tellOf(this.form, "gap-found");
  }

  /** @param {HTMLInputElement} input that was chosen just now */
  choose({ name, value }) {
    this.show("");
    if (name !== "change") return;
    this.store.set(this.nameOf("change"), value);
    const kept = this.guessOf(value);
    if (kept || this.told) this.check("way", kept); // a guess made before any change was chosen stays
    if (kept) this.tell(value, kept);
  }

  /**
   * @param {string} change
   * @param {string} way that was guessed
   */
  tell(change, way) {
    const outcome = this.outcomes()[this.changes().indexOf(change)];
    if (!outcome) return; // kept from a change that the lesson no longer has
    this.told = true;
    for (const each of this.outcomes()) each.open = each === outcome;
    const guess = outcome.dataset.way === way ? say("what_if_as_guessed") : say("what_if_your_guess", { guess: this.wordsOf(way) });
    this.show(
      `${guess} `,
      marked("data-with-numbers", outcome.querySelector(".went")?.textContent ?? ""),
      marked("data-instead-of-numbers", this.wordsOf(outcome.dataset.way ?? "")),
    );
  }

  restore() {
    const change = this.store.get(this.nameOf("change"));
    const way = this.guessOf(change);
    this.check("change", change);
    this.check("way", way);
    if (change && way) this.tell(change, way);
    if (this.changes().some((each) => this.guessOf(each))) tellOf(this.form, "gap-found");
  }

  forget() {
    this.form?.reset();
    this.told = false;
    for (const each of this.outcomes()) each.open = false;
    this.show("");
  }

  /** Names of the changes, in the order of what comes of them. */
  changes() {
    return this.radios("change").map(({ value }) => value);
  }

  outcomes() {
    return [...this.querySelectorAll(/** @type {"details"} */ (".outcome"))];
  }

  /** @param {string} change */
  guessOf(change) {
    return this.store.get(this.nameOf(`guess ${change}`));
  }

  /** @param {string} name */
  radios(name) {
    return [...this.querySelectorAll("input")].filter((input) => input.name === name);
  }

  /** @param {string} name */
  chosen(name) {
    return this.radios(name).find((input) => input.checked)?.value ?? "";
  }

  /**
   * @param {string} name
   * @param {string} value nothing to choose none
   */
  check(name, value) {
    for (const input of this.radios(name)) input.checked = input.value === value;
  }

  /**
   * The words beside a guess.
   * @param {string} way
   */
  wordsOf(way) {
    const input = this.radios("way").find(({ value }) => value === way);
    return input?.parentElement?.textContent?.trim() ?? "";
  }

  /** @param {(string | Node)[]} said */
  show(...said) {
    const text = document.createElement("span"); // one line of text, though it is made of parts
    text.append(...said);
    this.form?.querySelector("[data-band]")?.replaceChildren(...(said[0] ? [text] : []));
  }

  /**
   * What is kept under this stop.
   * @param {string} what
   */
  nameOf(what) {
    return `what-if ${this.closest("section")?.id} ${what}`;
  }
}

/**
 * A piece of text that the page shows with its numbers, or without them.
 * @param {string} mark
 * @param {string} text
 */
function marked(mark, text) {
  const piece = document.createElement("span");
  piece.setAttribute(mark, "");
  piece.textContent = text;
  return piece;
}
