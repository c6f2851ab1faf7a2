/**
 * How the copies of kept lessons are named and found, by the page and by the worker alike. Each
 * copy is a cache of its own; it is whole once it holds its list.
 */

const BEGINS_COPY = "plumline-kept-1"; // 1: the form below; another form gets another number
const WHOLE = "whole-copy"; // no file of a lesson is called so
const PAST = "past-copy"; // nor so

/**
 * A whole copy of a lesson.
 *
 * @typedef {object} KeptCopy
 * @property {string} folder path of the lesson's folder on its host, ending in a slash
 * @property {Cache} copy
 */

/**
 * @param {string} folder
 * @param {string} version
 */
export function copyName(folder, version) {
  return `${BEGINS_COPY} ${folder} ${version}`;
}

/**
 * Paths of the lessons' folders by the name of their copies, whole or not.
 * @returns {Promise<Map<string, string>>}
 */
export async function copies() {
  const names = (await caches.keys()).filter((name) => name.startsWith(`${BEGINS_COPY} `));
  return new Map(names.map((name) => [name, name.split(" ")[1] ?? ""]));
}

/**
 * Where a copy keeps its list.
 * @param {string} folder
 */
export function listAddress(folder) {
  return new URL(folder + WHOLE, location.origin).href;
}

/**
 * Where a copy keeps the mark that the site had a newer version when a page was last opened: its
 * pages then come from the site, and from the copy only where there is no network.
 * @param {string} folder
 */
export function pastAddress(folder) {
  return new URL(folder + PAST, location.origin).href;
}

/**
 * The whole copy of the lesson that a page belongs to, if it is kept.
 * @param {string} page address
 * @returns {Promise<KeptCopy | null>}
 */
export async function copyOf(page) {
  const { pathname } = new URL(page);
  for (const [name, folder] of await copies()) {
    if (!pathname.startsWith(folder)) continue;
    const copy = await caches.open(name);
    if (await copy.match(listAddress(folder))) return { folder, copy };
  }
  return null;
}

/**
 * The list of a copy.
 * @param {KeptCopy} kept
 * @returns {Promise<import("./kept.js").KeepList | undefined>}
 */
export async function listOf({ folder, copy }) {
  return (await copy.match(listAddress(folder)))?.json();
}
