/** Where things are kept on this device, and reading them; `Store` writes. */
import { siteFolder } from "./here.js";

/** How the keys begin: 2 is the form below, and two sites on one host, or in folders, keep their own. */
export const BEGINS = `plumline-2 ${siteFolder.pathname} `;
/** How they began before the site's path was in them. */
export const BEFORE = "plumline-1-";

/**
 * The key of what is kept under a name, also where it was kept before keys had a path.
 * @param {string} name
 */
export function storeKey(name) {
  carryOver(BEFORE + name, BEGINS + name);
  return BEGINS + name;
}

/**
 * Texts by name; none where they are absent, forbidden or spoiled.
 * @param {string} key
 * @returns {Record<string, string>}
 */
export function readStore(key) {
  try {
    const kept = Object.entries(JSON.parse(localStorage.getItem(key) ?? "{}"));
    return Object.fromEntries(kept.filter(([, text]) => typeof text === "string"));
  } catch {
    return {};
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
