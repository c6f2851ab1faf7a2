import { say } from "../../js/words.js";

/** Opens the answer once something was chosen. */
export class QuizChoice extends HTMLElement {
  static define() {
    customElements.define("quiz-choice", this);
  }

  connectedCallback() {
    this.addEventListener("change", () => {
      this.querySelector("details")?.setAttribute("open", "");
      this.title = say("right");
    });
  }
}
