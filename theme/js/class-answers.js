import { answerNames, COUNTED } from "./counted-answers.js";
import { lessonStore } from "./lesson-store.js";
import { make } from "./make.js";
import { say } from "./say.js";
import { triedOf } from "./tried.js";

/** What tells an answer before it is found. Hints stay open to everyone, and so does a worked example. */
const ANSWERS = "[data-reveal], [data-working], .of-all details";
/** What comes of a change: a learner guesses and then looks, also where answers come later. */
const AFTER_GUESS = ".outcome";

/**
 * Holds back the answers of a lesson for a class: until a try, or until the class looks at them
 * together. What a learner writes is checked all the same, as often as they like.
 * @param {HTMLElement} thread
 * @param {string} when `try` or `later`
 */
export function holdBack(thread, when) {
  thread.dataset.answers = when; // the drawing at the end waits too
  if (when === "later") thread.querySelector("lesson-ending > details")?.remove();
  for (const stop of thread.querySelectorAll(/** @type {"section"} */ (".stop"))) new HeldStop(stop, when);
}

class HeldStop {
  /** @type {Set<Element>} */
  tried = new Set();

  /**
   * @param {HTMLElement} stop
   * @param {string} when
   */
  constructor(stop, when) {
    this.stop = stop;
    const found = /** @type {HTMLDetailsElement[]} */ ([...stop.querySelectorAll(when === "try" ? `${ANSWERS}, ${AFTER_GUESS}` : ANSWERS)]);
    this.held = when === "try" ? found.filter((details) => this.triesFor(details).length) : found;
    this.line = make("p", { className: "quiet", textContent: when === "try" ? say("class_after_try") : say("class_later") });
    const [first] = this.held;
    (first?.closest(".helps, .of-all") ?? first)?.before(this.line);
    for (const details of this.held) details.hidden = true;
    if (when === "try" && first) this.listen();
  }

  listen() {
    const store = lessonStore();
    for (const form of this.stop.querySelectorAll("form")) if (form.matches(COUNTED) && answerNames(form).some((name) => triedOf(store, name))) this.tried.add(form);
    this.stop.addEventListener("submit", ({ target }) => target instanceof HTMLFormElement && isFilled(target) && this.note(target), { capture: true });
    this.stop.addEventListener("gap-found", ({ target }) => this.note(target));
    this.stop.closest("lesson-thread")?.addEventListener("lesson-cleared", () => (this.tried.clear(), this.show()));
    this.show();
  }

  /** @param {EventTarget | null} form that an answer was given in, right or not */
  note(form) {
    if (form instanceof Element) this.tried.add(form);
    this.show();
  }

  show() {
    for (const details of this.held) details.hidden = !this.triesFor(details).every((form) => this.tried.has(form));
    this.line.hidden = this.held.every(({ hidden }) => !hidden);
  }

  /**
   * The forms in which something is tried before an answer opens: its own, or all of the stop.
   * @param {Element} details
   */
  triesFor(details) {
    const own = details.closest("form");
    return (own ? [own] : [...this.stop.querySelectorAll("form")]).filter((form) => form.querySelector("input"));
  }
}

/**
 * Whether anything is written or chosen.
 * @param {HTMLFormElement} form
 */
function isFilled(form) {
  return [...new FormData(form).values()].some((value) => String(value).trim());
}
