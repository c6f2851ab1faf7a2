import { isWanted, readChoice, writeChoice } from "./lesson-choice.js";
import { tell } from "./tell.js";

/**
 * Narrows the list of lessons by what is chosen above it. The choice stands in the address, so
 * that a link to it can be sent.
 */
export class LessonFilter extends HTMLElement {
  static define() {
    customElements.define("lesson-filter", this);
  }

  form = this.querySelector("form");
  told = this.querySelector("[role=status]");
  rows = [...document.querySelectorAll(/** @type {"li"} */ (".lessons > li"))].map((row) => ({ row, lesson: listed(row) }));

  connectedCallback() {
    const { form } = this;
    if (!form) return;
    form.hidden = false;
    form.addEventListener("change", () => {
      history.replaceState(null, "", `#${writeChoice(this.chosen())}`);
      this.show();
    });
    form.addEventListener("submit", (event) => event.preventDefault());
    addEventListener("hashchange", () => this.take());
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
    if (this.told) this.told.textContent = tell(n ? "lessons" : "lessons_none", { n });
  }
}

/** @param {HTMLElement} row */
function listed({ dataset: { grades = "", minutes = "", topics = "", languages = "" } }) {
  return { grades: ` ${grades} `, minutes: Number(minutes), topics: ` ${topics} `, languages: ` ${languages} ` };
}
