import { Store } from "./store.js";

/**
 * Forgets all that one learner did, in every lesson.
 * @param {string} shape
 */
export function clearLearner(shape) {
  const begins = new Store(`${shape}/`).key;
  try {
    for (const key of Object.keys(localStorage)) if (key.startsWith(begins)) localStorage.removeItem(key);
  } catch {
    // forbidden: then nothing was kept either
  }
}
