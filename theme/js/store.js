/**
 * What a learner did, kept on this device: texts by name under one key. It may be absent, full,
 * forbidden or spoiled; then nothing is kept and nothing breaks.
 */
export class Store {
  /** @param {string} name of the lesson, or of what is kept for all lessons */
  constructor(name) {
    this.key = `plumline-1-${name}`; // 1: the shape below; another shape gets another number
  }

  /** @returns {Record<string, string>} */
  all() {
    try {
      const kept = Object.entries(JSON.parse(localStorage.getItem(this.key) ?? "{}"));
      return Object.fromEntries(kept.filter(([, text]) => typeof text === "string"));
    } catch {
      return {};
    }
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

/** The store of the lesson on this page. */
export function lessonStore() {
  return new Store(document.querySelector("lesson-thread")?.getAttribute("data-lesson") ?? location.pathname);
}
