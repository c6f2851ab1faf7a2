import { plainSymbols } from "./base32.js";
import { textHash } from "./text-hash.js";

/**
 * A class link, as in generator/compute/class_link.py, which says what stands in it: how a teacher
 * wants her class to see a lesson, as the fragment of an address. Knows no page.
 *
 * @typedef {object} ClassLink
 * @property {string[]} stops ids, in the lesson's order; none for all of them
 * @property {number} numbers largest number of practice; 0 for those of the lesson
 * @property {string} seed of practice; empty for that of the lesson
 * @property {boolean} blocksOnly
 * @property {boolean} largePrint
 * @property {string} answers `once`, `try` or `later`
 */

export const FOR_CLASS = "for-class";
const LONGEST_LINK = 1000;
const CHECK_LENGTH = 2;
const STOP_ID = /^[a-z0-9-]{1,60}$/;
/** By key what may stand there. */
const KNOWN_PARTS = new Map([
  ["numbers", /^(20|100|1000|3000|10000|20000)$/],
  ["seed", /^[a-z0-9-]{1,20}$/],
  ["blocks", /^only$/],
  ["print", /^large$/],
  ["answers", /^(try|later)$/],
]);

/**
 * The fragment, without its `#`.
 * @param {ClassLink} link
 * @param {string} lesson id of the lesson
 */
export function writeClassLink({ stops, numbers, seed, blocksOnly, largePrint, answers }, lesson) {
  const told = { numbers: numbers || "", seed, blocks: blocksOnly && "only", print: largePrint && "large", answers: answers !== "once" && answers };
  const asked = Object.entries(told).filter(([, value]) => value);
  const body = [[FOR_CLASS, stops.join("+")], ...asked].map((part) => part.join("=")).join(";");
  return `${body};k=${checkOf(body, lesson)}`;
}

/**
 * What a fragment asks for; or why it opens nothing of its own.
 * @param {string} fragment without its `#`, as the browser has it
 * @param {string} lesson id of the lesson whose page was opened by it
 * @returns {ClassLink | "no_link" | "spoiled"}
 */
export function readClassLink(fragment, lesson) {
  if (!fragment.startsWith(FOR_CLASS)) return "no_link";
  const written = fragment.length > LONGEST_LINK ? "" : decoded(fragment).replace(/ /g, "+");
  const at = written.lastIndexOf(";k=");
  const body = written.slice(0, Math.max(at, 0));
  if (!body || written.slice(at + 3).toUpperCase() !== checkOf(body, lesson)) return "spoiled";
  return askedBy(body) ?? "spoiled";
}

/**
 * What stands before the check; nothing where a part of it is not known.
 * @param {string} body
 * @returns {ClassLink | undefined}
 */
function askedBy(body) {
  const [[, named = ""] = [], ...parts] = body.split(";").map((part) => /** @type {[string, string]} */ (/^([^=]*)=?(.*)$/s.exec(part)?.slice(1)));
  const stops = [...new Set(named.split("+").filter(Boolean))];
  const told = new Map(parts);
  const known = parts.every(([key, value]) => KNOWN_PARTS.get(key)?.test(value));
  if (told.size !== parts.length || !known || !stops.every((stop) => STOP_ID.test(stop)) || !body.startsWith(`${FOR_CLASS}=`)) return undefined;
  return {
    stops,
    numbers: Number(told.get("numbers") ?? 0),
    seed: told.get("seed") ?? "",
    blocksOnly: told.has("blocks"),
    largePrint: told.has("print"),
    answers: told.get("answers") ?? "once",
  };
}

/**
 * Programs that pass a link on may encode some of it; what cannot be read stays as it is.
 * @param {string} fragment
 */
function decoded(fragment) {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}

/**
 * Two symbols of what is said and of the lesson it is said of.
 * @param {string} body
 * @param {string} lesson
 */
function checkOf(body, lesson) {
  const hashed = textHash(`${lesson}#${body}`);
  return plainSymbols(BigInt(((hashed >>> (5 * CHECK_LENGTH)) ^ hashed) & (32 ** CHECK_LENGTH - 1)), CHECK_LENGTH);
}
