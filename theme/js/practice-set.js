import { notYet } from "./answer-reader.js";
import { CheckedAnswer } from "./checked-answer.js";
import { writeTenths } from "./gap-arithmetic.js";
import { LiveElement } from "./live-element.js";
import { make } from "./make.js";
import { practiceProblems } from "./practice-numbers.js";
import { readings } from "./read-tenths.js";
import { say } from "./say.js";

const AT_ONCE = 12;

/**
 * Problems without end from a seed that stands in the page's address, so that a set can be shared;
 * each answer is read as those of a lesson's rows are. The first problems are in the page already.
 */
export class PracticeSet extends LiveElement {
  static define() {
    customElements.define("practice-set", this);
  }

  language = document.documentElement.lang;
  /** @type {Node | undefined} */
  pattern;
  problems = practiceProblems("", 100);

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.pattern ??= this.querySelector("li")?.cloneNode(true);
    for (const waiting of this.querySelectorAll("[data-choose], [data-more]")) waiting.removeAttribute("hidden");
    const chosen = (/** @type {Event} */ { target }) => target instanceof Element && target.closest("[data-choose]") && this.share(this.field("seed").value);
    this.addEventListener("submit", (event) => this.submitted(event), { signal });
    this.addEventListener("change", chosen, { signal });
    this.querySelector("[data-other]")?.addEventListener("click", () => this.share(freshSeed()), { signal });
    this.querySelector("[data-more]")?.addEventListener("click", () => this.add().querySelector("input")?.focus(), { signal });
    this.querySelector("[data-print]")?.addEventListener("click", () => print(), { signal });
    window.addEventListener("hashchange", () => this.start(), { signal });
    this.start();
  }

  /** @param {SubmitEvent} event */
  submitted(event) {
    event.preventDefault();
    const form = /** @type {HTMLFormElement} */ (event.target);
    if (form.matches("[data-choose]")) this.share(this.field("seed").value);
    else new PracticeAnswer(form).check();
  }

  /** Begins the set that the address names, or the lesson's own. */
  start() {
    const asked = new URLSearchParams(location.hash.slice(1));
    const size = this.field("size");
    const seed = asked.get("seed") || this.dataset.seed || "";
    if (this.querySelector(`option[value="${CSS.escape(asked.get("size") ?? "")}"]`)) size.value = asked.get("size") ?? "";
    this.field("seed").value = seed;
    this.querySelector("[data-set]")?.replaceChildren(seed);
    this.problems = practiceProblems(seed, Number(size.value));
    for (const list of this.querySelectorAll("ol")) list.replaceChildren();
    this.add();
  }

  /**
   * Puts a set into the address, from where it starts.
   * @param {string} seed
   */
  share(seed) {
    location.hash = String(new URLSearchParams({ seed: seed.trim() || this.dataset.seed || "", size: this.field("size").value }));
  }

  /** Shows more problems, and gives the first of them. */
  add() {
    const [list, solutions] = this.querySelectorAll("ol");
    const problems = Array.from({ length: AT_ONCE }, () => this.problems.next().value);
    const items = problems.map((problem) => this.item(problem));
    list?.append(...items);
    solutions?.append(...problems.map((problem) => make("li", {}, ...this.solved(problem))));
    return /** @type {HTMLElement} */ (items[0]);
  }

  /** @param {import("./practice-numbers.js").Problem} problem */
  item(problem) {
    const item = /** @type {HTMLElement} */ (this.pattern?.cloneNode(true));
    const [sum, gap] = this.solved(problem);
    Object.assign(item.querySelector("form")?.dataset ?? {}, problem);
    item.querySelector(".sum")?.replaceChildren(sum.trim());
    item.querySelector(".solved")?.replaceChildren(sum, gap);
    item.querySelector("[data-check]")?.removeAttribute("hidden");
    return item;
  }

  /**
   * A problem and its answer.
   * @param {import("./practice-numbers.js").Problem} problem
   * @returns {[string, HTMLElement]}
   */
  solved({ larger, smaller }) {
    return [`${this.write(larger)} − ${this.write(smaller)} = `, make("b", {}, this.write(larger - smaller))];
  }

  /** @param {number} number */
  write(number) {
    return writeTenths(number * 10, this.language);
  }

  /**
   * @param {string} name
   * @returns {HTMLInputElement | HTMLSelectElement}
   */
  field(name) {
    return /** @type {HTMLInputElement} */ (this.querySelector(`[name="${name}"]`));
  }
}

/** The answer to one problem; it is not kept, for the set begins anew at every visit. */
class PracticeAnswer extends CheckedAnswer {
  isRight() {
    return readings(this.text(), document.documentElement.lang, say("not_ones")).includes(this.number("larger") - this.number("smaller"));
  }

  answer() {
    return this.form.querySelector(".solved")?.textContent ?? "";
  }

  next() {
    return notYet({ larger: this.number("larger"), smaller: this.number("smaller"), per: NaN, counting: false, text: this.text() });
  }

  text() {
    return this.inputs[0]?.value ?? "";
  }

  /** @param {string} name of a number of the problem */
  number(name) {
    return Number(this.form.dataset[name]) * 10;
  }
}

/** A short set's name that nobody has to think of. */
function freshSeed() {
  return crypto.getRandomValues(new Uint32Array(1))[0]?.toString(36).slice(-5) ?? "";
}
