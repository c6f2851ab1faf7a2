import { siteFolder } from "./here.js";

/** How the keys begin: 2 is the form below, and two sites on one host, or in folders, keep their own. */
const BEGINS = `plumline-2 ${siteFolder.pathname} `;
/** How they began before the site's path was in them. */
const BEFORE = "plumline-1-";

/**
 * What a learner did, kept on this device: texts by name under one key. It may be absent, full,
 * forbidden or spoiled; then nothing is kept and nothing breaks.
 */
export class Store {
  /** @param {string} name of what is kept: for everyone on this device, or for one learner */
  constructor(name) {
    this.key = BEGINS + name;
    carryOver(BEFORE + name, this.key);
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

/**
 * Moves what was kept before keys had a path.
 * @param {string} before
 * @param {string} key
 */
function carryOver(before, key) {
  try {
    const kept = localStorage.getItem(before);
    if (kept === null) return;
    if (localStorage.getItem(key) === null) localStorage.setItem(key, kept);
    localStorage.removeItem(before);
  } catch {
    // full or forbidden: it stays where it is
  }
}

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

/** The shape that stands for the learner on a shared device: a circle until another is picked. */
export function shapeHere() {
  return new Store("device").get("shape") || "circle";
}

/** The store of the lesson on this page, for whoever is here. */
export function lessonStore() {
  const lesson = document.querySelector("lesson-thread")?.getAttribute("data-lesson") ?? location.pathname;
  return new Store(`${shapeHere()}/${lesson}`);
}
