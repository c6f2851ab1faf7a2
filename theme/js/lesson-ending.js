import { hear } from "./events.js";
import { LiveElement } from "./live-element.js";
import { make, makeButton } from "./make.js";
import { say } from "./say.js";

/**
 * The end of a lesson: once every gap is found, all of them hang there with their numbers, and each
 * estimate stands beside them as a distance. It can be put on paper by itself. Nothing is counted.
 */
export class LessonEnding extends LiveElement {
  static define() {
    customElements.define("lesson-ending", this);
  }

  told = make("div");

  /** @param {AbortSignal} signal */
  connected(signal) {
    const thread = this.closest("lesson-thread");
    const show = () => queueMicrotask(() => this.show(thread)); // when all others have heard of it
    hear(thread, "gap-found", show, signal);
    hear(thread, "lesson-cleared", show, signal);
    thread?.addEventListener("toggle", ({ target }) => target !== this.details() && show(), { signal, capture: true });
    thread?.addEventListener("input", show, { signal });
    this.told.dataset.withNumbers = "";
    if (!this.told.parentNode) this.complete(thread);
    show();
  }

  /** @param {Element | null} thread */
  show(thread) {
    const whole = !thread?.querySelector("hanging-gaps:not([data-whole])");
    const details = this.details();
    if (details && whole !== this.hasAttribute("data-whole")) details.open = whole;
    this.toggleAttribute("data-whole", whole);
    const bands = [...(thread?.querySelectorAll("estimate-line [data-band]") ?? [])];
    const texts = bands.map(({ textContent }) => textContent ?? "").filter(Boolean);
    this.told.replaceChildren(...texts.map((textContent) => make("p", { className: "quiet", textContent })));
  }

  /** What only a script can keep true; once. @param {Element | null} thread */
  complete(thread) {
    const title = document.querySelector("h1")?.textContent ?? "";
    this.prepend(make("h2", { textContent: say("ending_title", { title }) }));
    this.append(this.told, make("p", {}, makeButton(say("ending_print"), () => this.print())));
    thread?.after(this.parting());
  }

  /** What comes after the last question: one thing to tell, and the way out. */
  parting() {
    const all = make("div", { className: "ending" }, make("p", { textContent: say("ending_talk") }));
    const home = document.querySelector(/** @type {"a"} */ ("header a:not([data-language])"));
    if (home) all.append(make("p", {}, make("a", { className: "button filled", href: home.href, textContent: say("all_lessons") })));
    return all;
  }

  details() {
    return this.querySelector("details");
  }

  /** Puts the ending alone on paper, its drawing open. */
  print() {
    const page = document.documentElement;
    const details = this.details();
    if (details) details.open = true;
    page.toggleAttribute("data-ending-alone", true);
    addEventListener("afterprint", () => page.removeAttribute("data-ending-alone"), { once: true }); // a phone asks and goes on
    print();
  }
}
