import { BEFORE, BEGINS } from "./read-store.js";

/**
 * Forgets all that this site keeps under names that begin so.
 * @param {string} begins nothing for everything
 */
export function forget(begins) {
  try {
    for (const key of Object.keys(localStorage)) if (key.startsWith(BEGINS + begins) || key.startsWith(BEFORE + begins)) localStorage.removeItem(key);
  } catch {
    // forbidden: then nothing was kept either
  }
}
