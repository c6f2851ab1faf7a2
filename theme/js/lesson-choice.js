/**
 * Which lessons of the list are wanted. Knows no page.
 *
 * @typedef {Record<string, string>} Wanted what is asked of `grade`, `minutes`, `topic`, `language`
 * @typedef {object} Listed
 * @property {string} grades each with a space around it
 * @property {number} minutes
 * @property {string} topics each with a space around it
 * @property {string} languages each with a space around it
 */

/**
 * @param {Listed} lesson
 * @param {Wanted} wanted
 */
export function isWanted(lesson, { grade, minutes, topic, language }) {
  return (
    (!grade || lesson.grades.includes(` ${grade} `)) &&
    (!minutes || lesson.minutes <= Number(minutes)) &&
    (!topic || isAbout(lesson.topics, topic)) &&
    (!language || lesson.languages.includes(` ${language} `))
  );
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
