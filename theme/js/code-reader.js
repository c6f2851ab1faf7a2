import { cellsOf } from "./class-rows.js";
import { csvOf } from "./class-csv.js";
import { ClassReading } from "./class-reading.js";
import { classTable, lessonSummary, tableRow } from "./class-table.js";
import { linesOf } from "./code-lines.js";
import { LiveElement } from "./live-element.js";
import { make, makeButton } from "./make.js";
import { say } from "./say.js";
import { Store } from "./store.js";

/** Lines that are read before the page may do something else. */
const AT_ONCE = 100;
/** Bad lines that are seen at once; more are folded, for thousands take long to be laid out. */
const UNFOLDED = 20;

/**
 * Reads the finish codes of a class into a table, on the device alone. Nothing is kept unless it is
 * asked for, and everything pasted is shown as the text it is.
 */
export class CodeReader extends LiveElement {
  static define() {
    customElements.define("code-reader", this);
  }

  store = new Store("class");
  results = make("div");
  /** @type {import("./class-rows.js").ClassRow[]} */
  rows = [];
  turn = 0;

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = this.querySelector("form");
    if (!form) return;
    this.box = form.querySelector("textarea");
    this.keeping = form.querySelector(/** @type {"input"} */ ("input[type=checkbox]"));
    this.status = this.querySelector("[role=status]");
    const known = [...document.querySelectorAll(/** @type {"li"} */ ("[data-lessons] > li"))];
    this.reading = new ClassReading(known.map(({ textContent, dataset }) => ({ title: textContent?.trim() ?? "", lesson: Number(dataset.lesson), numbers: Number(dataset.numbers), file: dataset.file ?? "" })));
    form.addEventListener("submit", (event) => (event.preventDefault(), this.read()), { signal });
    form.addEventListener("input", () => this.keep(), { signal });
    form.querySelector("[data-forget]")?.addEventListener("click", () => this.forget(), { signal });
    this.restore();
    this.append(this.results);
    for (const part of this.querySelectorAll("[data-no-script], form")) part.toggleAttribute("hidden", !part.matches("form"));
  }

  restore() {
    const kept = this.store.get("codes");
    if (!kept || !this.box || !this.keeping) return;
    this.box.value = kept;
    this.keeping.checked = true;
  }

  keep() {
    if (this.keeping?.checked) this.store.set("codes", this.box?.value ?? "");
    else this.store.clear();
  }

  forget() {
    this.turn++;
    this.rows = [];
    this.store.clear();
    this.querySelector("form")?.reset();
    this.results.replaceChildren();
    this.tell(say("codes_cleared"));
    this.box?.focus();
  }

  async read() {
    const turn = ++this.turn;
    const lines = linesOf(this.box?.value ?? "");
    const [table, bad] = [classTable(), make("ul")];
    this.rows = [];
    this.results.replaceChildren();
    this.tell("");
    for (let at = 0; at < lines.length; at += AT_ONCE) {
      for (const line of lines.slice(at, at + AT_ONCE)) await this.readOne(line, table, bad);
      if (turn !== this.turn) return; // read anew, or cleared
      this.tell(say("codes_reading", { some: Math.min(at + AT_ONCE, lines.length), all: lines.length }));
      await new Promise((go) => setTimeout(go)); // the page stays awake
    }
    if (turn === this.turn) this.show(table, bad);
  }

  /**
   * @param {{ line: number, text: string }} line
   * @param {HTMLTableElement} table
   * @param {HTMLUListElement} bad
   */
  async readOne(line, table, bad) {
    const read = await this.reading?.read(line);
    if (typeof read === "string") bad.append(make("li", { textContent: read }));
    else if (read) {
      this.rows.push(read);
      table.tBodies[0]?.append(tableRow(read));
    }
  }

  /**
   * @param {HTMLTableElement} table
   * @param {HTMLUListElement} bad
   */
  show(table, bad) {
    const unread = bad.childElementCount;
    if (this.rows.length) this.results.append(this.scrolled(table), make("p", {}, makeButton(say("codes_csv"), () => this.save())), ...this.summary());
    if (unread) this.results.append(make("h2", { textContent: say("codes_bad_title") }), unread > UNFOLDED ? folded(bad) : bad);
    this.tell(`${say("codes_read_all", { n: this.rows.length })} ${unread ? say("codes_unread", { n: unread }) : ""}`.trim());
  }

  /** A wide table is moved sideways by itself, by keyboard as well. @param {HTMLTableElement} table */
  scrolled(table) {
    const around = make("div", { className: "wide", tabIndex: 0 }, table);
    around.setAttribute("role", "region");
    around.setAttribute("aria-label", say("codes_table"));
    return around;
  }

  summary() {
    /** @type {Map<string, import("./class-rows.js").ClassRow[]>} */
    const lessons = new Map();
    for (const row of this.rows) lessons.set(row.folder, [...(lessons.get(row.folder) ?? []), row]);
    return [make("h2", { textContent: say("codes_missed") }), ...[...lessons.values()].map(lessonSummary)];
  }

  save() {
    const file = new Blob([csvOf(this.rows.map(cellsOf))], { type: "text/csv" });
    const link = make("a", { href: URL.createObjectURL(file), download: "finish-codes.csv" });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href));
  }

  /** @param {string} text */
  tell(text) {
    this.status?.replaceChildren(text);
  }
}

/** @param {HTMLUListElement} bad */
function folded(bad) {
  return make("details", {}, make("summary", { textContent: say("codes_unread", { n: bad.childElementCount }) }), bad);
}
