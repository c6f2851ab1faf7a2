import { siteFolder } from "./here.js";

/** How the keys begin: 2 is the form below, and two sites on one host, or in folders, keep their own. */
export const BEGINS = `plumline-2 ${siteFolder.pathname} `;
/** How they began before the site's path was in them. */
export const BEFORE = "plumline-1-";

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
