import { hear } from "../../js/events.js";
import { lessonStore } from "../../js/lesson-store.js";
import { LiveElement } from "../../js/live-element.js";
import { askPlay } from "../../js/play-asked.js";

/**
 * Keeps the count of its move covered until its row was found, its working was opened or the
 * learner asks to see it; then offers to count along.
 */
export class MoveCard extends LiveElement {
  static define() {
    customElements.define("move-card", this);
  }

  store = lessonStore();
  offer = "";

  /** @param {AbortSignal} signal */
  connected(signal) {
    const { row = "" } = this.dataset;
    const thread = this.closest("lesson-thread");
    const asked = this.button("count-with");
    this.offer ||= asked?.textContent ?? "";
    this.cover(row !== "" && !this.store.get(`shown ${row}`));
    this.button("show")?.addEventListener("click", () => this.show(row), { signal });
    asked?.addEventListener("click", () => askPlay(asked, this.offer, "count-along", this), { signal });
    hear(thread, "gap-found", (form) => this.uncover(form), signal);
    hear(thread, "lesson-cleared", () => this.cover(row !== ""), signal);
    const opened = (/** @type {Event} */ { target }) => target instanceof Element && target.matches("[data-working][open]") && this.uncover(target);
    thread?.addEventListener("toggle", opened, { signal, capture: true });
  }

  /** @param {string} row which was asked to be shown */
  show(row) {
    this.store.set(`shown ${row}`, "yes");
    this.cover(false);
    this.button("count-with")?.focus();
  }

  /** @param {Element} inside of the row that is found */
  uncover(inside) {
    if (inside.closest("form")?.id === this.dataset.row) this.cover(false);
  }

  /** @param {boolean} covered */
  cover(covered) {
    this.toggleAttribute("data-covered", covered);
    this.button("show")?.toggleAttribute("hidden", !covered);
    this.button("count-with")?.toggleAttribute("hidden", covered);
  }

  /**
   * @param {string} name
   * @returns {HTMLElement | null}
   */
  button(name) {
    return this.querySelector(`[data-${name}]`);
  }
}
