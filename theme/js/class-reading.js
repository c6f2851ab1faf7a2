import { layoutOf } from "./class-rows.js";
import { codeIn } from "./code-lines.js";
import { readFinish } from "./finish-layout.js";

/**
 * @typedef {object} KnownLesson
 * @property {string} title
 * @property {number[]} lesson marks of its id, of today and of before
 * @property {number[]} numbers marks of its numbers, of today and under older names of its stops
 * @property {string} file address of what is fetched of it
 */

/** Reads lines of codes; what a lesson asks is fetched once, when its first code is met. */
export class ClassReading {
  /** @type {Map<string, Promise<import("./class-rows.js").LessonTold>>} */
  fetched = new Map();

  /** @param {KnownLesson[]} lessons of the site */
  constructor(lessons) {
    this.lessons = lessons;
  }

  /**
   * A row of the table, or one for each lesson that the code fits; or why there is none.
   * @param {{ line: number, text: string }} written
   * @returns {Promise<import("./class-rows.js").ClassRow[] | import("./bad-lines.js").BadLine>}
   */
  async read(written) {
    const { line, label, code, marks } = codeIn(written);
    if (typeof marks === "string") return { line, why: marks };
    const named = this.lessons.filter(({ lesson }) => lesson.includes(marks.lesson));
    if (!named[0]) return { line, why: "lesson" };
    const same = named.filter(({ numbers }) => numbers.includes(marks.numbers));
    if (!same[0]) return { line, why: "numbers", values: { title: named[0].title } };
    try {
      const tried = await Promise.all(same.map((one) => this.of(one, label, code)));
      const rows = tried.filter((one) => one !== undefined);
      return rows.length ? rows : { line, why: "no_code" };
    } catch {
      return { line, why: "fetch", values: { title: same[0].title } };
    }
  }

  /**
   * @param {KnownLesson} known
   * @param {string} label
   * @param {string} code
   */
  async of({ file }, label, code) {
    const told = await this.told(file);
    const finished = readFinish(code, layoutOf(told));
    return finished && { label, code, folder: file.split("/").at(-2) ?? "", told, finished };
  }

  /** @param {string} file */
  told(file) {
    const found = this.fetched.get(file) ?? fetch(file).then((answer) => answer.json());
    this.fetched.set(file, found);
    found.catch(() => this.fetched.delete(file)); // the next try asks again
    return found;
  }
}
