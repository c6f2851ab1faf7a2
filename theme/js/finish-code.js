import { copyText } from "./copy-text.js";
import { hear } from "./events.js";
import { finishCode } from "./finish-layout.js";
import { finishedSoFar, placesOnPage } from "./finish-on-page.js";
import { isKept, lessonStore } from "./lesson-store.js";
import { LiveElement } from "./live-element.js";
import { make, makeButton } from "./make.js";
import { say } from "./say.js";
import { keepTimeInSight } from "./time-in-sight.js";

/**
 * At the end of a lesson: a code that a learner may show to the teacher. It is made on the device of
 * what is kept there; nothing is sent, and nothing is said of it as long as nobody asks.
 */
export class FinishCode extends LiveElement {
  static define() {
    customElements.define("finish-code", this);
    const thread = document.querySelector(/** @type {"div"} */ ("lesson-thread[data-finish]"));
    (document.querySelector("lesson-thread + div.ending") ?? thread)?.after(document.createElement("finish-code"));
  }

  store = lessonStore();
  keepTime = () => {};
  code = make("output");
  told = make("p");
  shown = make("div", { hidden: true });

  /** @param {AbortSignal} signal */
  connected(signal) {
    const thread = document.querySelector(/** @type {"div"} */ ("lesson-thread"));
    if (!thread) return;
    if (!this.firstChild) this.begin(thread);
    for (const happened of /** @type {const} */ (["gap-found", "lesson-cleared"])) hear(thread, happened, () => this.hide(), signal);
    for (const happened of ["input", "click"]) thread.addEventListener(happened, () => this.hide(), { signal }); // a code that is old is none
  }

  /** @param {HTMLElement} thread */
  begin(thread) {
    this.keepTime = keepTimeInSight(this.store);
    this.told.setAttribute("role", "status");
    this.code.setAttribute("aria-label", say("finish_code"));
    this.shown.append(make("p", { textContent: say("finish_code") }), this.code, make("p", {}, makeButton(say("finish_copy"), () => this.copy())));
    const show = makeButton(say("finish_show"), () => this.show(thread));
    this.append(make("p", {}, show), make("p", { className: "quiet", textContent: say("finish_tells") }), this.shown, this.told);
  }

  /** @param {HTMLElement} thread */
  show(thread) {
    this.keepTime();
    const places = placesOnPage(thread);
    this.shown.hidden = !isKept();
    this.code.textContent = this.shown.hidden ? "" : finishCode(finishedSoFar(places, this.store), places.layout);
    this.told.textContent = this.shown.hidden ? say("finish_not_kept") : "";
  }

  hide() {
    this.shown.hidden = true;
    this.told.textContent = this.code.textContent = "";
  }

  async copy() {
    const isCopied = await copyText(this.code.textContent ?? "", this.code);
    this.told.textContent = isCopied ? say("finish_copied") : say("finish_copy_by_hand");
  }
}
