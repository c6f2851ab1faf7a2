/**
 * What a learner did, kept on this device: texts by name under one key. It may be absent, full,
 * forbidden or spoiled; then nothing is kept and nothing breaks.
 */
export class Store {
  /** @param {string} name of what is kept: for everyone on this device, or for one learner */
  constructor(name) {
    this.key = `plumline-1-${name}`; // 1: the form below; another form gets another number
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

/** The shape that stands for the learner on a shared device: a circle until another is picked. */
export function shapeHere() {
  return new Store("device").get("shape") || "circle";
}

/** The store of the lesson on this page, for whoever is here. */
export function lessonStore() {
  const lesson = document.querySelector("lesson-thread")?.getAttribute("data-lesson") ?? location.pathname;
  return new Store(`${shapeHere()}/${lesson}`);
}
