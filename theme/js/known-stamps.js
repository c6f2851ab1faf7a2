import { alike } from "./stamp-signs.js";

/**
 * @typedef {object} KnownStamp a sheet that bears a stamp, or bore it
 * @property {string} stamp
 * @property {string} lesson its id
 * @property {string} language
 * @property {string} sheet
 * @property {boolean} now whether the sheet still prints the same
 * @property {string} gone day since when the lesson is not on the site, or a dash; empty while it is
 * @property {string} title of a lesson that is gone
 */

/**
 * @typedef {object} PastSheet what is told of a sheet that holds no more
 * @property {string} since day on which it went out
 * @property {string} until day on which another one did; empty where that is not known
 * @property {string[]} changes which numbers are others now, in the language of the sheet
 */

/** What the site knows of stamps: fetched from it when one is asked for, a small file for all that begin alike. */
export class KnownStamps {
  /**
   * @param {string} root address of the site
   * @param {number} signs by how many first signs the files are parted
   */
  constructor(root, signs) {
    this.root = root;
    this.signs = signs;
  }

  /**
   * Every sheet that the typed stamp fits; the one that bears just these signs before those that look like it.
   * @param {string} typed
   * @returns {Promise<KnownStamp[]>}
   */
  async of(typed) {
    const wanted = alike(typed);
    const answer = await fetch(`${this.root}stamps/${encodeURIComponent(wanted.slice(0, this.signs))}.json`);
    if (!answer.ok) throw new Error(answer.statusText);
    /** @type {Record<string, [string, string, string, number, string?, string?][]>} */
    const told = await answer.json();
    const fits = Object.entries(told).filter(([stamp]) => alike(stamp) === wanted);
    const exact = fits.filter(([stamp]) => stamp === typed.toUpperCase().replace(/[^A-Z0-9]/g, ""));
    return (exact.length ? exact : fits).flatMap(([stamp, sheets]) => sheets.map(([lesson, language, sheet, now, gone = "", title = ""]) => ({ stamp, lesson, language, sheet, now: now === 1, gone, title })));
  }

  /**
   * What became of a sheet of a lesson that is there.
   * @param {string} folder of the lesson, from the site's root
   * @param {string} stamp
   * @returns {Promise<PastSheet>}
   */
  async past(folder, stamp) {
    const answer = await fetch(`${this.root}${folder}sheets.json`);
    const told = await answer.json();
    return told[stamp];
  }
}
