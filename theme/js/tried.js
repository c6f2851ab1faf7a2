/**
 * What is kept of each answer that counts: `first` where it was right at once, `later` where it is
 * right by now, `no` where it was tried or looked at and is not. Nothing is kept before a first try.
 *
 * @typedef {Pick<import("./store.js").Store, "get" | "set">} Kept
 */

/**
 * An answer was checked.
 * @param {Kept} store
 * @param {string} name that the answer is kept under
 * @param {boolean} right
 */
export function noteTry(store, name, right) {
  const kept = triedOf(store, name);
  if (kept && (kept !== "no" || !right)) return;
  store.set(`tried ${name}`, right ? (kept ? "later" : "first") : "no");
}

/**
 * The answer was looked at; whoever writes it afterwards has not found it at first.
 * @param {Kept} store
 * @param {string} name
 */
export function noteLook(store, name) {
  noteTry(store, name, false);
}

/**
 * An answer to a question that is asked again later: the last one counts, for nobody is told.
 * @param {Kept} store
 * @param {string} name
 * @param {boolean} right
 */
export function noteBefore(store, name, right) {
  store.set(`tried ${name}`, right ? "first" : "no");
}

/**
 * @param {Kept} store
 * @param {string} name
 */
export function triedOf(store, name) {
  return store.get(`tried ${name}`);
}
