/**
 * Which lessons of the list are wanted. Knows no page.
 *
 * @typedef {Record<string, string>} Wanted what is asked of `grade`, `minutes`, `topic`, `language`, `word`
 * @typedef {object} Listed
 * @property {string} grades each with a space around it
 * @property {number} minutes
 * @property {string} topics each with a space around it
 * @property {string} languages each with a space around it
 * @property {string} words folded, each with a space before it
 */

/**
 * @param {Listed} lesson
 * @param {Wanted} wanted
 */
export function isWanted(lesson, { grade, minutes, topic, language, word }) {
  return (
    (!grade || lesson.grades.includes(` ${grade} `)) &&
    (!minutes || lesson.minutes <= Number(minutes)) &&
    (!topic || isAbout(lesson.topics, topic)) &&
    (!language || lesson.languages.includes(` ${language} `)) &&
    (!word || foldedWords(word).match(/ [^ ]+/g)?.every((begin) => lesson.words.includes(begin)) !== false)
  );
}

/**
 * A text as it is looked for: small letters without their marks, each word with a space before it,
 * so that whoever types the beginning of a word finds it.
 * @param {string} text
 */
export function foldedWords(text) {
  const plain = text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  return ` ${plain.replace(/[^\p{L}\p{N}]+/gu, " ").trim()}`;
}

/**
 * @param {string} topics
 * @param {string} topic with `-` before it for every lesson that is not about it
 */
function isAbout(topics, topic) {
  return topics.includes(` ${topic.replace(/^-/, "")} `) !== topic.startsWith("-");
}

/**
 * What is asked for, from the part of an address after `#`.
 * @param {string} hash
 * @returns {Wanted}
 */
export function readChoice(hash) {
  return Object.fromEntries(new URLSearchParams(hash.replace(/^#/, "")));
}

/**
 * The same, to be put there.
 * @param {Wanted} wanted
 */
export function writeChoice(wanted) {
  return String(new URLSearchParams(Object.entries(wanted).filter(([, value]) => value)));
}
