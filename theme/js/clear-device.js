import { button } from "./button.js";
import { forget } from "./forget.js";
import { siteFolder } from "./here.js";
import { removeEvery } from "./kept.js";
import { LiveElement } from "./live-element.js";
import { say } from "./say.js";

/**
 * Clears everything that this site keeps on the device: what every shape did, all choices, the kept
 * lessons and their worker. It asks first.
 */
export class ClearDevice extends LiveElement {
  static define() {
    customElements.define("clear-device", this);
  }

  opener = button();
  told = document.createElement("p");

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.opener.textContent = say("clear_all");
    this.opener.addEventListener("click", () => this.ask(), { signal });
    this.told.setAttribute("role", "status");
    this.offer();
    this.hidden = false;
  }

  offer() {
    this.replaceChildren(this.opener, this.told);
  }

  ask() {
    const question = document.createElement("p");
    question.id = "clear-all";
    question.textContent = say("clear_all_asks");
    const yes = this.choice(say("clear_all_yes"), () => this.clear());
    const no = this.choice(say("clear_all_no"), () => this.leave());
    no.classList.add("filled");
    const group = document.createElement("div");
    group.setAttribute("role", "group");
    group.setAttribute("aria-labelledby", question.id);
    const answers = document.createElement("p");
    answers.className = "buttons";
    answers.append(yes, no);
    group.append(question, answers);
    this.told.textContent = "";
    this.replaceChildren(group, this.told);
    no.focus(); // what cannot be brought back takes one step more
  }

  leave() {
    this.offer();
    this.opener.focus();
  }

  async clear() {
    /** @type {import("./lesson-thread.js").LessonThread | null} */ (document.querySelector("lesson-thread"))?.clear();
    forget("");
    await removeEvery(siteFolder);
    this.told.textContent = say("clear_all_done");
    const close = this.choice(say("close"), () => location.reload()); // every part of the page looks into its store when it begins
    this.replaceChildren(this.told, close);
    close.focus();
  }

  /**
   * @param {string} text
   * @param {() => void} then
   */
  choice(text, then) {
    const made = button(text);
    made.addEventListener("click", then);
    return made;
  }
}
