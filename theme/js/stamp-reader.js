import { KnownStamps } from "./known-stamps.js";
import { keys } from "./keys.js";
import { LiveElement } from "./live-element.js";
import { make } from "./make.js";
import { say } from "./say.js";
import { canBeStamp } from "./stamp-signs.js";

const SHEETS = keys({
  worksheet: "worksheet_title",
  answers: "answers_title",
  cards: "cards_title",
  practice: "practice_title",
  notes: "notes_title",
  family: "family_title",
  lesson: "updates_sheet_lesson",
  projector: "projector_title",
});

/** Tells of a typed stamp which sheet bears it, whether the sheet still holds, and which numbers differ if not. */
export class StampReader extends LiveElement {
  static define() {
    customElements.define("stamp-reader", this);
  }

  /** @type {Record<string, string>} by language, the folder of its pages */
  folders = {};
  turn = 0;

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = this.querySelector("form");
    if (!form) return;
    if (location.protocol === "file:") return this.querySelector("[data-no-script]")?.replaceChildren(say("stamps_from_folder"));
    const { root = "", signs, folders = "{}" } = this.dataset;
    this.known = new KnownStamps(root, Number(signs));
    this.folders = JSON.parse(folders);
    this.box = form.querySelector("input");
    form.addEventListener("submit", (event) => (event.preventDefault(), this.ask()), { signal });
    addEventListener("hashchange", () => this.askOfAddress(), { signal });
    for (const part of this.querySelectorAll("[data-no-script], form")) part.toggleAttribute("hidden", !part.matches("form"));
    this.askOfAddress();
  }

  /** A link or a code may name the stamp: it is asked for at once. */
  askOfAddress() {
    const named = location.hash.slice(1);
    if (!this.box || !canBeStamp(named)) return;
    this.box.value = named;
    this.ask();
  }

  async ask() {
    const typed = this.box?.value ?? "";
    const turn = ++this.turn;
    if (!canBeStamp(typed)) return this.tell(make("p", {}, say("stamps_six")));
    this.tell(make("p", {}, say("stamps_asking")));
    const told = await this.answers(typed).catch(() => [make("p", {}, say("stamps_no_network"))]);
    if (turn === this.turn) this.tell(...told);
  }

  /**
   * @param {string} typed
   * @returns {Promise<Node[]>}
   */
  async answers(typed) {
    const found = (await this.known?.of(typed)) ?? [];
    if (!found.length) return [make("p", {}, make("b", {}, say("stamps_unknown", { stamp: typed.trim() }))), make("p", {}, say("stamps_unknown_why"))];
    return (await Promise.all(found.map((one) => this.answer(one)))).flat();
  }

  /**
   * @param {import("./known-stamps.js").KnownStamp} one
   * @returns {Promise<Node[]>}
   */
  async answer(one) {
    const folder = `${this.folders[one.language] ?? ""}${one.lesson}/`;
    const sheet = say("stamps_sheet", { stamp: one.stamp, sheet: this.sheet(one), title: one.title || this.lessonTitle(one.lesson) });
    const which = make("p", {}, make("b", {}, sheet));
    const since = one.gone.length > 1;
    if (one.gone) return [which, make("p", { className: "band" }, since ? say("stamps_gone_since", { day: this.day(one.gone) }) : say("stamps_gone"))];
    const all = make("p", {}, make("a", { href: `${this.known?.root}${folder}sheets.html#${one.stamp}` }, say("stamps_all_sheets")));
    if (one.now) return [which, make("p", { className: "band" }, say("stamps_right")), all];
    const past = await this.known?.past(folder, one.stamp);
    return past ? [which, ...this.past(past, one.language), all] : [which, make("p", { className: "band" }, say("stamps_not_right")), all];
  }

  /**
   * @param {import("./known-stamps.js").PastSheet} past
   * @param {string} language of the sheet
   */
  past({ since, until, changes }, language) {
    const when = until ? say("sheets_past_until", { since: this.day(since), until: this.day(until) }) : say("sheets_past", { since: this.day(since) });
    const band = make("p", { className: "band" }, `${say("stamps_not_right")} ${when}`);
    if (!changes.length) return [band, make("p", {}, say("stamps_words_alone"))];
    const list = make("ul", { lang: language }, ...changes.map((line) => make("li", {}, line)));
    return [band, make("p", {}, say("stamps_numbers")), list];
  }

  /** @param {import("./known-stamps.js").KnownStamp} one */
  sheet({ sheet, language }) {
    const name = say(SHEETS[/** @type {keyof typeof SHEETS} */ (sheet)] ?? SHEETS.lesson);
    const here = document.documentElement.lang.split("-")[0];
    if (language.split("-")[0] === here) return name;
    return `${name} (${new Intl.DisplayNames([document.documentElement.lang], { type: "language" }).of(language)})`;
  }

  /** @param {string} lesson */
  lessonTitle(lesson) {
    const item = [...document.querySelectorAll(/** @type {"li"} */ ("[data-lessons] > li"))].find(({ dataset }) => dataset.lesson === lesson);
    return item?.textContent?.trim() ?? lesson;
  }

  /** @param {string} day as 2026-11-26 */
  day(day) {
    return new Date(day).toLocaleDateString(document.documentElement.lang, { dateStyle: "long", timeZone: "UTC" });
  }

  /** @param {Node[]} nodes */
  tell(...nodes) {
    this.querySelector("[role=status]")?.replaceChildren(...nodes);
  }
}
