import { isWanted, readChoice, writeChoice } from "./lesson-choice.js";
import { LiveElement } from "./live-element.js";
import { say } from "./say.js";

/**
 * Narrows the list of lessons by what is chosen above it. The choice stands in the address, so
 * that a link to it can be sent.
 */
export class LessonFilter extends LiveElement {
  static define() {
    customElements.define("lesson-filter", this);
  }

  /** @type {{ row: HTMLElement, lesson: import("./lesson-choice.js").Listed }[]} */
  rows = [];

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = this.querySelector("form");
    if (!form) return;
    form.hidden = false;
    this.rows = [...document.querySelectorAll(/** @type {"li"} */ (".lessons > li"))].map((row) => ({ row, lesson: listed(row) }));
    const chosen = () => {
      history.replaceState(null, "", `#${writeChoice(this.chosen())}`);
      this.show();
    };
    form.addEventListener("change", chosen, { signal });
    form.addEventListener("submit", (event) => event.preventDefault(), { signal });
    addEventListener("hashchange", () => this.take(), { signal });
    this.take();
  }

  /** Takes the choice from the address; a value that is not offered chooses nothing. */
  take() {
    const wanted = readChoice(location.hash);
    for (const select of this.querySelectorAll("select")) {
      select.value = wanted[select.name] ?? "";
      if (select.selectedIndex < 0) select.value = "";
    }
    this.show();
  }

  chosen() {
    return Object.fromEntries([...this.querySelectorAll("select")].map(({ name, value }) => [name, value]));
  }

  show() {
    const wanted = this.chosen();
    let n = 0;
    for (const { row, lesson } of this.rows) {
      row.hidden = !isWanted(lesson, wanted);
      if (!row.hidden) n += 1;
    }
    const told = this.querySelector("[role=status]");
    if (told) told.textContent = n ? say("lessons", { n }) : say("lessons_none");
  }
}

/** @param {HTMLElement} row */
function listed({ dataset: { grades = "", minutes = "", topics = "", languages = "" } }) {
  return { grades: ` ${grades} `, minutes: Number(minutes), topics: ` ${topics} `, languages: ` ${languages} ` };
}
