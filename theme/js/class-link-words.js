import { keys } from "./keys.js";
import { say } from "./say.js";

const ANSWERS_SAID = keys({ once: "link_said_once", try: "link_said_try", later: "link_said_later" });

/**
 * What a class link opens, in one sentence for the teacher who sends it.
 * @param {string} title of the lesson
 * @param {{ language: string, label: string }} page
 * @param {import("./class-link.js").ClassLink} link
 * @param {{ some: number, all: number, size: string }} chosen how many stops, and the largest number in words
 */
export function classLinkWords(title, { language, label }, link, { some, all, size }) {
  const stops = some < all ? say("link_some", { some, all }) : all ? say("link_all", { all }) : say("link_whole");
  const answers = say(ANSWERS_SAID[/** @type {keyof typeof ANSWERS_SAID} */ (link.answers)]);
  const choices = [stops, practiceWords(link, size), link.blocksOnly && say("link_blocks_only"), link.largePrint && say("link_large_print"), answers];
  return say("link_opens", { title, language: languageName(language, label), choices: choices.filter(Boolean).join(", ") });
}

/**
 * @param {import("./class-link.js").ClassLink} link
 * @param {string} size
 */
function practiceWords({ seed, numbers }, size) {
  if (seed) return numbers ? say("link_set_numbers", { seed, size }) : say("link_set", { seed });
  return numbers && say("link_numbers", { size });
}

/**
 * A language in the words of the page, else as it calls itself.
 * @param {string} language
 * @param {string} label
 */
function languageName(language, label) {
  try {
    return new Intl.DisplayNames([document.documentElement.lang], { type: "language" }).of(language) ?? label;
  } catch {
    return label;
  }
}
