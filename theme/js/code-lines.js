import { symbolsOf } from "./base32.js";
import { marksOf } from "./finish-layout.js";

/**
 * What a teacher pasted: one code a line, with any label before or after it. Knows no page.
 *
 * @typedef {object} CodeLine
 * @property {number} line counted from 1
 * @property {string} label
 * @property {string} code its symbols in groups of four; empty where there is none
 * @property {ReturnType<typeof marksOf>} marks
 */

/** A code has as many symbols as one of the smallest lesson, or more. */
const FEWEST_SYMBOLS = 8;
/** A label and a code are short; a whole text pasted as one line is not looked through. */
const LONGEST_LINE = 400;
/** What stands between a label and a code. */
const BETWEEN_WORDS = /[\s,;|:]+/;
const AROUND_LABEL = /^[\s,;|:\u2010-\u2015-]+|[\s,;|:\u2010-\u2015-]+$/g;
const HYPHENATED = /^[0-9A-Za-z]{4}(?:[-\u2010-\u2015\u2212][0-9A-Za-z]{4})+[-\u2010-\u2015\u2212]?[0-9A-Za-z*~$=]{0,4}$/;

/** Marks of writing direction and spaces without a width, which come along with what is copied. */
const UNSEEN = /[ \u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;

/** What is seen of a code, whose groups may stand apart. @param {string} written */
function seen(written) {
  return written.replace(UNSEEN, "");
}

/**
 * A code as the lesson shows it, however it was typed, so that equal codes are equal; as it is written
 * where it cannot be one.
 * @param {string} written
 */
function inFours(written) {
  return symbolsOf(seen(written)).match(/.{1,4}/g)?.join("-") ?? written;
}

/**
 * Every line that is not empty.
 * @param {string} text
 * @returns {{ line: number, text: string }[]}
 */
export function linesOf(text) {
  return text.split(/\r\n|\r|\n|\u2028|\u2029/).map((line, at) => ({ line: at + 1, text: line.replace(/^\ufeff/, "") })).filter(({ text: line }) => line.trim());
}

/**
 * The code in a line and what stands around it.
 * @param {{ line: number, text: string }} line
 * @returns {CodeLine}
 */
export function codeIn({ line, text }) {
  const found = text.length > LONGEST_LINE ? undefined : bestOf(text);
  if (!found) return { line, label: text.trim(), code: "", marks: "no_code" };
  const label = text.replace(found.written, " ").replace(AROUND_LABEL, "").replace(/\s+/g, " ");
  return { line, label, code: inFours(found.written), marks: found.marks };
}

/**
 * Of all that might be a code the one that is whole; else the one that looks most like one.
 * @param {string} text
 */
function bestOf(text) {
  const tried = [...candidates(text)].map((written) => ({ written, marks: marksOf(seen(written)) }));
  return tried.find(({ marks }) => typeof marks === "object") ?? tried.find(({ written }) => HYPHENATED.test(seen(written))) ?? tried.find(({ written }) => /\d/.test(written) && symbolsOf(seen(written)));
}

/**
 * Words that are long enough, and groups of four that stand apart.
 * @param {string} text
 */
function* candidates(text) {
  const words = text.split(BETWEEN_WORDS).filter(Boolean);
  for (const word of words) if (symbolsOf(seen(word)).length >= FEWEST_SYMBOLS || HYPHENATED.test(seen(word))) yield word;
  for (const [at, first] of words.entries()) {
    if (seen(first).length !== 4) continue;
    for (let end = at + 2; end <= words.length && seen(words[end - 2] ?? "").length === 4; end++) {
      const joined = words.slice(at, end).join(" ");
      if (text.includes(joined) && symbolsOf(seen(joined)).length >= FEWEST_SYMBOLS) yield* asWritten(joined);
    }
  }
}

/**
 * Groups with spaces between them are a code only where they are a whole one: four letters may be a name.
 * @param {string} joined
 */
function* asWritten(joined) {
  if (typeof marksOf(seen(joined)) === "object") yield joined;
}
