import { TOLD_BY_KINDS } from "./told-by-kinds.js";

/**
 * What of a stop is read aloud, in pieces. Knows no voice.
 *
 * @typedef {object} Piece
 * @property {string} text
 * @property {string} language tag of the language it is written in
 */

const TOLD = `h2, .prompt, [data-hint][open] > p, [data-reveal][open] > p, [data-band], ${TOLD_BY_KINDS}`;

/**
 * The heading, the question, and the hint and the answer where they are open: sentence by sentence,
 * for some browsers fall silent in the middle of a long text.
 * @param {Element} stop
 * @returns {Piece[]}
 */
export function pieces(stop) {
  return [...stop.querySelectorAll(TOLD)].filter(isShown).flatMap(spokenTexts).flatMap(sentencesOf);
}

/** What is left out of the page with its numbers, or without them: see `blocks-only.js`. */
function leftOut() {
  return document.documentElement.matches("[data-blocks-only]") ? "[data-with-numbers]" : "[data-instead-of-numbers]";
}

/** @param {Element} element */
function isShown(element) {
  return !element.closest(`[hidden], video, ${leftOut()}`) && !element.parentElement?.closest("details:not([open])");
}

/**
 * The texts of an element, those in another language apart; what only a screen reader hears is left out.
 * @param {Element} element
 * @returns {Piece[]}
 */
function spokenTexts(element) {
  const language = element.closest("[lang]")?.getAttribute("lang") ?? "";
  /** @type {Piece[]} */
  const found = [];
  for (const node of element.childNodes) {
    if (node instanceof Element && node.matches(`.unseen, ${leftOut()}`)) continue;
    const here = (node instanceof Element && node.getAttribute("lang")) || language;
    const last = found[found.length - 1];
    if (last?.language === here) last.text += node.textContent;
    else found.push({ text: node.textContent ?? "", language: here });
  }
  return found;
}

/** @param {Piece} piece */
function sentencesOf({ text, language }) {
  const sentences = text.match(/.*?[.?!…]+(?=\s|$)|.+$/gs) ?? [];
  return sentences.map((sentence) => ({ text: sentence.replace(/\s+/g, " ").trim(), language })).filter(({ text }) => text);
}
