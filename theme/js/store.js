import { readStore, storeKey } from "./read-store.js";

/**
 * What a learner did, kept on this device: texts by name under one key. It may be absent, full,
 * forbidden or spoiled; then nothing is kept and nothing breaks.
 */
export class Store {
  /** @param {string} name of what is kept: for everyone on this device, or for one learner */
  constructor(name) {
    this.key = storeKey(name);
  }

  /** @returns {Record<string, string>} */
  all() {
    return readStore(this.key);
  }

  /** @param {string} name */
  get(name) {
    return this.all()[name] ?? "";
  }

  /**
   * @param {string} name
   * @param {string} text
   */
  set(name, text) {
    if (document.querySelector("[data-keeps-nothing]")) return; // a page that is shown to many is nobody's own
    try {
      localStorage.setItem(this.key, JSON.stringify({ ...this.all(), [name]: text }));
    } catch {
      // full or forbidden: the page goes on without memory
    }
  }

  clear() {
    try {
      localStorage.removeItem(this.key);
    } catch {
      // forbidden: then nothing was kept either
    }
  }
}
