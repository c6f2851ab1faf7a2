import { notYet } from "./answer-reader.js";
import { CheckedAnswer } from "./checked-answer.js";
import { classLinkHere } from "./class-link-here.js";
import { carryClassLink } from "./class-ways.js";
import { freshSeed } from "./fresh-seed.js";
import { writeTenths } from "./gap-arithmetic.js";
import { LiveElement } from "./live-element.js";
import { make } from "./make.js";
import { practiceSet } from "./practice-kinds.js";
import { readings } from "./read-tenths.js";
import { say } from "./say.js";

const AT_ONCE = 12;

/**
 * Problems without end from a seed that stands in the page's address, so that a set can be shared;
 * each answer is read as those of a lesson's rows are. The first problems are in the page already.
 * A class link brings its own set, and may hold the answers back.
 */
export class PracticeSet extends LiveElement {
  static define() {
    customElements.define("practice-set", this);
  }

  language = document.documentElement.lang;
  /** @type {Node | undefined} */
  pattern;
  problems = practiceSet("", 100, 0);
  shown = 0;
  /** @type {import("./class-link.js").ClassLink | undefined} */
  forClass;

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.followClassLink();
    this.pattern ??= this.querySelector("li")?.cloneNode(true);
    for (const waiting of this.querySelectorAll("[data-choose], [data-more]")) waiting.removeAttribute("hidden");
    const chosen = (/** @type {Event} */ { target }) => target instanceof Element && target.closest("[data-choose]") && this.share(this.field("seed").value);
    this.addEventListener("submit", (event) => this.submitted(event), { signal });
    this.addEventListener("change", chosen, { signal });
    this.querySelector("[data-other]")?.addEventListener("click", () => this.share(freshSeed()), { signal });
    this.querySelector("[data-more]")?.addEventListener("click", () => /** @type {HTMLElement | null} */ (this.add().querySelector("input:not([hidden] *)"))?.focus(), { signal });
    this.querySelector("[data-print]")?.addEventListener("click", () => print(), { signal });
    window.addEventListener("hashchange", () => this.start(), { signal });
    this.start();
  }

  followClassLink() {
    const { text, link } = classLinkHere(this.dataset.lesson ?? "");
    if (typeof link === "string") return;
    carryClassLink(text, link);
    this.forClass = link;
    document.documentElement.toggleAttribute("data-large-print", link.largePrint);
    if (link.answers === "once") return;
    this.dataset.answers = link.answers; // by which the styles hold them back
    this.querySelector("ol")?.before(make("p", { className: "quiet", textContent: link.answers === "try" ? say("class_answers_try") : say("class_answers_later") }));
  }

  /** @param {SubmitEvent} event */
  submitted(event) {
    event.preventDefault();
    const form = /** @type {HTMLFormElement} */ (event.target);
    if (form.matches("[data-choose]")) this.share(this.field("seed").value);
    else {
      form.toggleAttribute("data-tried", form.hasAttribute("data-tried") || [...new FormData(form).values()].some(Boolean));
      new PracticeAnswer(form).check();
    }
  }

  /** Begins the set that the address names, or the lesson's own. */
  start() {
    const asked = new URLSearchParams(location.hash.slice(1));
    const size = this.field("size");
    const seed = asked.get("seed") || this.forClass?.seed || this.dataset.seed || "";
    const largest = asked.get("size") || String(this.forClass?.numbers ?? "");
    if (this.querySelector(`option[value="${CSS.escape(largest)}"]`)) size.value = largest;
    this.field("seed").value = seed;
    this.querySelector("[data-set]")?.replaceChildren(seed);
    this.problems = practiceSet(seed, Number(size.value), Number(this.dataset.per));
    this.shown = 0;
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
    solutions?.append(...problems.map((problem) => this.solved(problem)));
    return /** @type {HTMLElement} */ (items[0]);
  }

  /** @param {import("./practice-kinds.js").Problem} problem */
  item(problem) {
    const item = /** @type {HTMLElement} */ (this.pattern?.cloneNode(true));
    const { says, answer } = this.worded(problem);
    const sum = item.querySelector(".sum");
    this.shown += 1;
    Object.assign(item.querySelector("form")?.dataset ?? {}, problem);
    if (sum) sum.id = `sum-${this.shown}`;
    sum?.replaceChildren(says);
    item.querySelector('[name="gap"]')?.setAttribute("aria-labelledby", `sum-${this.shown}`);
    for (const side of item.querySelectorAll(".side-asked")) side.toggleAttribute("hidden", problem.kind !== "which");
    item.querySelector(".left-asked")?.toggleAttribute("hidden", problem.kind !== "count");
    item.querySelector(".solved")?.replaceChildren(`${says} `, make("b", {}, answer));
    item.querySelector("[data-check]")?.removeAttribute("hidden");
    return item;
  }

  /** @param {import("./practice-kinds.js").Problem} problem */
  solved(problem) {
    const { says, answer } = this.worded(problem);
    return make("li", {}, `${says} `, make("b", {}, answer));
  }

  /**
   * A problem and its answer in words.
   * @param {import("./practice-kinds.js").Problem} problem
   */
  worded({ kind, first, second }) {
    const gap = Math.abs(first - second);
    const numbers = { first: this.write(first), second: this.write(second), gap: this.write(gap), left: this.write(first % second) };
    if (kind === "count") return { says: fromLeft(`${numbers.first} ÷ ${numbers.second} =`), answer: this.write(Math.floor(first / second)) + say("left_over_after", numbers) };
    if (kind === "gap") return { says: fromLeft(`${numbers.first} − ${numbers.second} =`), answer: numbers.gap };
    return { says: say("practice_which", numbers), answer: first > second ? say("practice_first_more", numbers) : say("practice_second_more", numbers) };
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
  /** The first part of the answer that is not right yet. */
  open() {
    const asked = { side: this.kind === "which" && this.first > this.second ? "first" : "second", gap: this.right(), left: this.first % this.second };
    if (this.kind === "which" && this.written("side") !== asked.side) return "side";
    if (!this.reads("gap").includes(asked.gap * 10)) return "gap";
    return this.kind === "count" && !this.reads("left").includes(asked.left * 10) ? "left" : "";
  }

  isRight() {
    return !this.open();
  }

  answer() {
    return this.form.querySelector(".solved")?.textContent ?? "";
  }

  next() {
    const open = this.open();
    if (open === "side") return say("practice_side_first");
    if (open === "left") return say("practice_left_first");
    const larger = Math.max(this.first, this.second) * 10;
    const counting = this.kind === "count";
    const smaller = counting ? 0 : Math.min(this.first, this.second) * 10;
    return notYet({ larger, smaller, per: counting ? this.second * 10 : NaN, counting, text: this.written("gap") });
  }

  right() {
    return this.kind === "count" ? Math.floor(this.first / this.second) : Math.abs(this.first - this.second);
  }

  /** @param {string} name of an entry */
  reads(name) {
    return readings(this.written(name), document.documentElement.lang);
  }

  /** @param {string} name of an entry */
  written(name) {
    return String(new FormData(this.form).get(name) ?? "");
  }

  get kind() {
    return this.form.dataset.kind;
  }

  get first() {
    return Number(this.form.dataset.first);
  }

  get second() {
    return Number(this.form.dataset.second);
  }
}

/**
 * A sum among words that are written from the right: it is held apart from them (Unicode Standard Annex #9, 2.6).
 * @param {string} sum
 */
function fromLeft(sum) {
  return document.documentElement.dir === "rtl" ? `\u2066${sum}\u2069` : sum;
}
