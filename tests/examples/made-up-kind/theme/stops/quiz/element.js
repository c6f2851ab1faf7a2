import { LiveElement } from "../../js/live-element.js";
import { say } from "../../js/say.js";

/** Opens the answer once something was chosen. */
export class QuizChoice extends LiveElement {
  static define() {
    customElements.define("quiz-choice", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.addEventListener("change", () => this.open(), { signal });
  }

  open() {
    this.querySelector("details")?.setAttribute("open", "");
    this.title = say("quiz_chosen");
  }
}
