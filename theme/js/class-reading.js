import { layoutOf } from "./class-rows.js";
import { codeIn } from "./code-lines.js";
import { readFinish } from "./finish-layout.js";
import { keys } from "./keys.js";
import { say } from "./say.js";

/**
 * @typedef {object} KnownLesson
 * @property {string} title
 * @property {number} lesson
 * @property {number} numbers
 * @property {string} file address of what is fetched of it
 */

const BAD = keys({ no_code: "codes_bad_no_code", wrong_symbol: "codes_bad_wrong" });

/** Reads lines of codes; what a lesson asks is fetched once, when its first code is met. */
export class ClassReading {
  /** @type {Map<string, Promise<import("./class-rows.js").LessonTold>>} */
  fetched = new Map();

  /** @param {KnownLesson[]} lessons of the site */
  constructor(lessons) {
    this.lessons = lessons;
  }

  /**
   * A row of the table, or a sentence that names the line and says why there is none.
   * @param {{ line: number, text: string }} written
   * @returns {Promise<import("./class-rows.js").ClassRow | string>}
   */
  async read(written) {
    const { line, label, code, marks } = codeIn(written);
    if (typeof marks === "string") return say(BAD[marks], { line });
    const named = this.lessons.filter(({ lesson }) => lesson === marks.lesson);
    if (!named[0]) return say("codes_bad_lesson", { line });
    const same = named.filter(({ numbers }) => numbers === marks.numbers);
    if (!same[0]) return say("codes_bad_numbers", { line, title: named[0].title });
    try {
      return this.only(await Promise.all(same.map((one) => this.of(one, label, code))), line);
    } catch {
      return say("codes_bad_fetch", { line, title: same[0].title });
    }
  }

  /**
   * @param {(import("./class-rows.js").ClassRow | undefined)[]} tried
   * @param {number} line
   */
  only(tried, line) {
    const [row, other] = tried.filter((one) => one !== undefined);
    if (!row) return say(BAD.no_code, { line });
    return other ? say("codes_bad_two", { line, one: row.told.title, other: other.told.title }) : row;
  }

  /**
   * @param {KnownLesson} known
   * @param {string} label
   * @param {string} code
   */
  async of({ file }, label, code) {
    const told = await this.told(file);
    const finished = readFinish(code.replace(/ /g, ""), layoutOf(told));
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
