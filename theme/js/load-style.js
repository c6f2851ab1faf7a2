import { here } from "./here.js";

/**
 * Brings a style sheet that stands beside this script; goes on without it where it does not come.
 * @param {string} name
 * @returns {Promise<unknown>}
 */
export function loadStyle(name) {
  const link = document.createElement("link");
  link.rel = "stylesheet";
  link.href = new URL(name, here).href;
  document.head.append(link);
  return new Promise((done) => {
    link.onload = link.onerror = done;
  });
}
