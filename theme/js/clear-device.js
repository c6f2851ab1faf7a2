import { askFirst } from "./ask-first.js";
import { button } from "./button.js";
import { forget } from "./forget.js";
import { siteFolder } from "./here.js";
import { removeEvery } from "./kept.js";
import { LiveElement } from "./live-element.js";
import { makeButton } from "./make.js";
import { say } from "./say.js";

/**
 * Clears everything that this site keeps on the device: what everyone did, all choices, the kept
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
    const yes = makeButton(say("clear_all_yes"), () => this.clear());
    const no = makeButton(say("clear_all_no"), () => this.leave(), "filled");
    this.told.textContent = "";
    askFirst(this, say("clear_all_asks"), yes, no);
    this.append(this.told);
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
    const close = makeButton(say("close"), () => location.reload()); // every part of the page looks into its store when it begins
    this.replaceChildren(this.told, close);
    close.focus();
  }
}
