import { badList, noteBad } from "./bad-lines.js";
import { cellsOf } from "./class-rows.js";
import { csvOf } from "./class-csv.js";
import { ClassReading } from "./class-reading.js";
import { choiceRow, classTable, lessonSummary, tableRow } from "./class-table.js";
import { linesOf } from "./code-lines.js";
import { LiveElement } from "./live-element.js";
import { make, makeButton } from "./make.js";
import { say } from "./say.js";
import { Store } from "./store.js";

/** Lines that are read before the page may do something else. */
const AT_ONCE = 100;

/** @typedef {import("./class-rows.js").ClassRow} ClassRow */

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
  summary = make("div");
  /** @type {(ClassRow | undefined)[]} nothing where a code fits several lessons and none is chosen */
  rows = [];
  /** @type {import("./bad-lines.js").BadLines[]} */
  bad = [];
  turn = 0;

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = this.querySelector("form");
    if (!form) return;
    if (location.protocol === "file:") return this.querySelector("[data-no-script]")?.replaceChildren(say("codes_from_folder"));
    this.box = form.querySelector("textarea");
    this.keeping = form.querySelector(/** @type {"input"} */ ("input[type=checkbox]"));
    this.status = this.querySelector("[role=status]");
    const known = [...document.querySelectorAll(/** @type {"li"} */ ("[data-lessons] > li"))];
    this.reading = new ClassReading(known.map(({ textContent, dataset }) => ({ title: textContent?.trim() ?? "", lesson: marksIn(dataset.lesson), numbers: marksIn(dataset.numbers), file: dataset.file ?? "" })));
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
    const table = classTable();
    [this.rows, this.bad] = [[], []];
    this.results.replaceChildren();
    this.tell("");
    for (let at = 0; at < lines.length; at += AT_ONCE) {
      for (const line of lines.slice(at, at + AT_ONCE)) await this.readOne(line, table);
      if (turn !== this.turn) return; // read anew, or cleared
      this.tell(say("codes_reading", { some: Math.min(at + AT_ONCE, lines.length), all: lines.length }));
      await new Promise((go) => setTimeout(go)); // the page stays awake
    }
    if (turn === this.turn) this.show(table);
  }

  /**
   * @param {{ line: number, text: string }} line
   * @param {HTMLTableElement} table
   */
  async readOne(line, table) {
    const read = await this.reading?.read(line);
    if (!read) return;
    if (!Array.isArray(read)) return noteBad(this.bad, read);
    const at = this.rows.push(read.length > 1 ? undefined : read[0]) - 1;
    const [row] = read;
    if (row) table.tBodies[0]?.append(read.length > 1 ? this.open(read, at) : tableRow(row));
  }

  /**
   * A row that waits until she says which lesson it is of.
   * @param {ClassRow[]} fits
   * @param {number} at
   */
  open(fits, at) {
    const row = choiceRow(fits, (chosen) => {
      if (!chosen) return;
      this.rows[at] = chosen;
      const made = tableRow(chosen);
      row.replaceWith(made);
      made.tabIndex = -1; // where she chose there is nothing left to choose
      made.focus();
      this.sum();
    });
    return row;
  }

  /** @param {HTMLTableElement} table */
  show(table) {
    if (this.rows.length) this.results.append(this.scrolled(table), make("p", {}, makeButton(say("codes_csv"), () => this.save())), this.summary);
    if (this.bad.length) this.results.append(make("h2", { textContent: say("codes_bad_title") }), ...badList(this.bad));
    this.sum();
  }

  /** What the codes come to, anew with each that was chosen a lesson for. */
  sum() {
    const rows = this.known();
    /** @type {Map<string, ClassRow[]>} */
    const lessons = new Map();
    for (const row of rows) lessons.set(row.folder, [...(lessons.get(row.folder) ?? []), row]);
    this.summary.replaceChildren(...(rows.length ? [make("h2", { textContent: say("codes_missed") })] : []), ...[...lessons.values()].map(lessonSummary));
    const unread = this.bad.reduce((sum, { line, last }) => sum + last - line + 1, 0);
    const again = rows.length - new Set(rows.map(({ folder, code }) => `${folder} ${code}`)).size;
    const open = this.rows.length - rows.length;
    const told = [say("codes_read_all", { n: this.rows.length }), again && say("codes_again", { n: again }), open && say("codes_open", { n: open }), unread && say("codes_unread", { n: unread })];
    this.tell(told.filter(Boolean).join(" "));
  }

  /** The codes whose lesson is known, in the order typed. */
  known() {
    return this.rows.filter((row) => row !== undefined);
  }

  /** A wide table is moved sideways by itself, by keyboard as well. @param {HTMLTableElement} table */
  scrolled(table) {
    const around = make("div", { className: "wide", tabIndex: 0 }, table);
    around.setAttribute("role", "region");
    around.setAttribute("aria-label", say("codes_table"));
    return around;
  }

  save() {
    const file = new Blob([csvOf(this.known().map(cellsOf))], { type: "text/csv" });
    const link = make("a", { href: URL.createObjectURL(file), download: "finish-codes.csv" });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href));
  }

  /** @param {string} text */
  tell(text) {
    this.status?.replaceChildren(text);
  }
}

/** Today's first, then those of older names. @param {string | undefined} written */
function marksIn(written = "") {
  return written.split(" ").map(Number);
}
