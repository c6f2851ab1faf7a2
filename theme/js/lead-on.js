import { readStore, storeKey } from "./read-store.js";

/**
 * Moves what was kept under an older name; where there is some under the newer one, what that says
 * stands.
 * @param {string} before
 * @param {string} now
 */
export function leadOn(before, now) {
  const from = storeKey(before);
  const to = storeKey(now);
  try {
    if (localStorage.getItem(from) === null) return;
    localStorage.setItem(to, JSON.stringify({ ...readStore(from), ...readStore(to) }));
    localStorage.removeItem(from); // after the other stands: a full device loses nothing
  } catch {
    // full or forbidden: it stays where it is
  }
}
