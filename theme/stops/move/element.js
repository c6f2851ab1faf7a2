import { announce } from "../../js/announce.js";
import { bringPlay } from "../../js/play-loader.js";
import { lessonStore } from "../../js/store.js";
import { say } from "../../js/words.js";

/**
 * Keeps the count of its move covered until its row was found, its working was opened or the
 * learner asks to see it; then offers to count along.
 */
export class MoveCard extends HTMLElement {
  static define() {
    customElements.define("move-card", this);
  }

  store = lessonStore();
  show = this.querySelector(/** @type {"button"} */ ("[data-show]"));
  along = this.querySelector(/** @type {"button"} */ ("[data-count-with]"));
  offer = this.along?.textContent ?? "";

  connectedCallback() {
    const { row = "" } = this.dataset;
    const thread = this.closest("lesson-thread");
    this.cover(row !== "" && !this.store.get(`shown ${row}`));
    this.show?.addEventListener("click", () => {
      this.store.set(`shown ${row}`, "yes");
      this.cover(false);
      this.along?.focus();
    });
    this.along?.addEventListener("click", () => this.countAlong());
    thread?.addEventListener("gap-found", ({ target }) => this.uncover(target, "form"));
    thread?.addEventListener("toggle", ({ target }) => this.uncover(target, "[data-working][open]"), true);
    thread?.addEventListener("lesson-cleared", () => this.cover(row !== ""));
  }

  /**
   * @param {EventTarget | null} target
   * @param {string} kind of element that tells of a row
   */
  uncover(target, kind) {
    const told = target instanceof Element && target.matches(kind) && target.closest("form");
    if (told && told.id === this.dataset.row) this.cover(false);
  }

  /** @param {boolean} covered */
  cover(covered) {
    this.toggleAttribute("data-covered", covered);
    this.show?.toggleAttribute("hidden", !covered);
    this.along?.toggleAttribute("hidden", covered);
  }

  async countAlong() {
    try {
      await bringPlay();
      this.tell(this.offer);
      this.dispatchEvent(new CustomEvent("count-along", { bubbles: true }));
    } catch {
      this.tell(say("play_failed"));
      announce(say("play_failed"));
    }
  }

  /** @param {string} text for the button */
  tell(text) {
    this.along?.replaceChildren(text);
  }
}
