import { lessonStore } from "../../js/store.js";
import { say } from "../../js/words.js";

/**
 * Takes the learner's decision which way an invented day leans, and says whether the numbers lean
 * the same way. A right decision sends up `gap-found`, as a found gap does.
 */
export class DayBalance extends HTMLElement {
  static define() {
    customElements.define("day-balance", this);
  }

  store = lessonStore();
  name = `day ${this.closest("section")?.id}`;

  connectedCallback() {
    const form = this.querySelector("form");
    if (!form) return;
    this.querySelector("[data-check]")?.removeAttribute("hidden");
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.check();
    });
    form.addEventListener("change", () => this.store.set(this.name, this.chosen()));
    this.closest("lesson-thread")?.addEventListener("lesson-cleared", () => {
      form.reset();
      this.show("");
    });
    const kept = this.querySelector(`input[value="${CSS.escape(this.store.get(this.name))}"]`);
    if (kept instanceof HTMLInputElement) kept.checked = true;
    if (this.isRight()) this.finish();
  }

  check() {
    if (this.isRight()) return this.finish();
    this.show(say(this.chosen() ? "day_not_yet" : "day_choose"));
  }

  finish() {
    this.show(`${say("right")} ${this.querySelector("[data-answer]")?.textContent ?? ""}`);
    this.querySelector("form")?.dispatchEvent(new CustomEvent("gap-found", { bubbles: true }));
  }

  isRight() {
    return this.chosen() === this.getAttribute("data-lean");
  }

  /** The way the learner chose, or nothing. */
  chosen() {
    const input = this.querySelector("input:checked");
    return input instanceof HTMLInputElement ? input.value : "";
  }

  /** @param {string} text */
  show(text) {
    const band = this.querySelector("[data-band]");
    if (band) band.textContent = text;
  }
}
