import { FOR_CLASS, readClassLink } from "./class-link.js";
import { formerNames } from "./former-names.js";

/**
 * The class link that this page was opened by, with its text; it stays with the tab while its reader
 * goes from place to place on the page, and nowhere else. One that was made while the lesson had
 * another name is followed too.
 * @param {string} lesson id of the page's lesson
 */
export function classLinkHere(lesson) {
  const text = isClassLinkNamed() ? location.hash.slice(1) : String(history.state?.forClass ?? "");
  addEventListener("hashchange", () => stayWith(text));
  const read = [lesson, ...formerNames()].map((name) => readClassLink(text, name));
  return { text, link: read.find((link) => typeof link !== "string") ?? readClassLink(text, lesson) };
}

/**
 * A link to a place of the page takes the place of the fragment; another class link opens the page anew.
 * @param {string} text of the class link
 */
function stayWith(text) {
  if (!isClassLinkNamed()) history.replaceState({ ...history.state, forClass: text }, "");
  else if (location.hash.slice(1) !== text) location.reload();
}

/** Whether the address itself names a class link, and not only the tab. */
export function isClassLinkNamed() {
  return location.hash.startsWith(`#${FOR_CLASS}`);
}

/** The lesson of a page whose address is in that lesson's folder. */
export function lessonHere() {
  return location.pathname.split("/").at(-2) ?? "";
}
