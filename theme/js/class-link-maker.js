import { addressOf, linkableOf, stopsOf } from "./class-link-lesson.js";
import { classLinkWords } from "./class-link-words.js";
import { writeClassLink } from "./class-link.js";
import { copyText } from "./copy-text.js";
import { freshSeed } from "./fresh-seed.js";
import { LiveElement } from "./live-element.js";
import { loadScript } from "./load-script.js";
import { make } from "./make.js";
import { qrDrawing } from "./qr-drawing.js";
import { say } from "./say.js";

/**
 * Makes a link that opens a lesson the way a class should see it, on the device alone. Before it is
 * sent, a sentence says what it opens; with its QR code that fills half a sheet for the board.
 */
export class ClassLinkMaker extends LiveElement {
  static define() {
    customElements.define("class-link", this);
  }

  /** @type {import("./class-link-lesson.js").Linkable[]} */
  lessons = [];
  /** @type {import("./class-link-lesson.js").Linkable | undefined} */
  lesson;
  turn = 0;

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = this.querySelector("form");
    this.lessons = [...this.querySelectorAll(/** @type {"li"} */ ("[data-lessons] > li"))].map(linkableOf);
    if (!form || !this.lessons.length) return;
    this.form = form;
    form.addEventListener("submit", (event) => event.preventDefault(), { signal });
    form.addEventListener("input", ({ target }) => (target === this.field("lesson") ? this.choose() : this.show()), { signal });
    this.whenPressed("[data-other-set]", () => this.drawSeed(), signal);
    this.whenPressed("[data-copy]", () => this.copy(), signal);
    this.whenPressed("[data-print]", () => this.print(), signal);
    this.querySelector("[data-no-script]")?.setAttribute("hidden", "");
    form.hidden = false;
    this.offerLessons();
    this.choose();
    loadScript(this.dataset.library ?? "").then(() => this.show()).catch(() => {}); // the link is there without its code
  }

  offerLessons() {
    const select = this.field("lesson");
    if (select.options.length) return;
    const choices = this.lessons.map(({ id, title }) => make("option", { value: id, textContent: title }));
    if (choices.length > 1) choices.unshift(make("option", { value: "", textContent: say("link_choose") }));
    select.append(...choices);
    this.querySelector("[data-lesson-choice]")?.toggleAttribute("hidden", choices.length < 2);
  }

  /** Another lesson: its languages and its stops, all of them chosen. */
  async choose() {
    const turn = ++this.turn;
    const lesson = this.lessons.find(({ id }) => id === this.field("lesson").value);
    const stops = lesson ? await stopsOf(lesson) : [];
    if (turn !== this.turn) return; // another one by now
    this.lesson = lesson;
    this.querySelector("[data-stops]")?.replaceChildren(...stops.map(stopChoice));
    this.field("language").replaceChildren(...(lesson?.pages ?? []).map(({ hreflang, textContent }) => make("option", { value: hreflang, textContent })));
    for (const part of this.querySelectorAll("form > :not([data-lesson-choice])")) part.toggleAttribute("hidden", !lesson || (part.contains(this.querySelector("[data-stops]")) && !stops.length));
    this.show();
  }

  /** The link and what it opens, as everything is chosen now. */
  show() {
    const { lesson } = this;
    const boxes = [...this.querySelectorAll("input")].filter(({ name }) => name === "stop");
    const chosen = boxes.filter(({ checked }) => checked).map(({ value }) => value);
    const page = lesson?.pages.find(({ hreflang }) => hreflang === this.field("language").value);
    this.inside("[data-board]").hidden = !lesson || !page;
    if (!lesson || !page) return;
    const address = addressOf(page);
    if (!address || (boxes.length && !chosen.length)) return this.tell(address ? say("link_none") : say("link_no_address"), "");
    const link = this.asked(chosen.length < boxes.length ? chosen : []);
    const size = this.field("numbers").selectedOptions[0]?.textContent ?? "";
    const words = classLinkWords(lesson.title, { language: page.hreflang, label: page.textContent ?? "" }, link, { some: chosen.length, all: boxes.length, size });
    this.tell(words, isPlain(link) ? address : `${address}#${writeClassLink(link, lesson.id)}`);
  }

  /**
   * @param {string[]} stops none for all of them
   * @returns {import("./class-link.js").ClassLink}
   */
  asked(stops) {
    const given = new FormData(this.form);
    const seed = String(given.get("seed")).toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");
    return { stops, numbers: Number(given.get("numbers")), seed, blocksOnly: given.has("blocks"), largePrint: given.has("large"), answers: String(given.get("answers")) };
  }

  /**
   * @param {string} words
   * @param {string} link empty where there is none
   */
  tell(words, link) {
    this.inside("[data-says]").textContent = words;
    this.inside("[data-link]").textContent = link;
    this.inside("[data-told]").textContent = "";
    const drawn = link && "leanQr" in window ? [qrDrawing(link, say("link_qr"))] : [];
    this.inside("[data-qr]").replaceChildren(...drawn);
    this.inside("[data-board] .buttons").hidden = !link;
  }

  drawSeed() {
    this.field("seed").value = freshSeed();
    this.show();
  }

  async copy() {
    const shown = this.inside("[data-link]");
    this.inside("[data-told]").textContent = (await copyText(shown.textContent ?? "", shown)) ? say("finish_copied") : say("link_copy_by_hand");
  }

  /** Puts the link alone on paper, with what it opens. */
  print() {
    document.documentElement.toggleAttribute("data-board-alone", true);
    addEventListener("afterprint", () => document.documentElement.removeAttribute("data-board-alone"), { once: true }); // a phone asks and goes on
    print();
  }

  /**
   * @param {string} button
   * @param {() => void} then
   * @param {AbortSignal} signal
   */
  whenPressed(button, then, signal) {
    this.querySelector(button)?.addEventListener("click", then, { signal });
  }

  /** @param {string} part @returns {HTMLElement} */
  inside(part) {
    return /** @type {HTMLElement} */ (this.querySelector(part));
  }

  /** @param {string} name @returns {HTMLSelectElement} */
  field(name) {
    return /** @type {HTMLSelectElement} */ (this.querySelector(`[name="${name}"]`));
  }
}

/** @param {{ id: string, name: string }} stop */
function stopChoice({ id, name }) {
  return make("label", { className: "choice" }, make("input", { type: "checkbox", name: "stop", value: id, checked: true }), ` ${name}`);
}

/** Whether nothing is asked for but the lesson itself. @param {import("./class-link.js").ClassLink} link */
function isPlain({ stops, numbers, seed, blocksOnly, largePrint, answers }) {
  return !stops.length && !numbers && !seed && !blocksOnly && !largePrint && answers === "once";
}
