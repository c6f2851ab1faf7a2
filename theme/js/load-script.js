import { ownScript } from "./own-script.js";

/**
 * Brings a script that only some need, when they need it.
 * @param {string} address
 * @returns {Promise<unknown>}
 */
export function loadScript(address) {
  const script = document.createElement("script");
  script.src = ownScript(address);
  document.head.append(script);
  return new Promise((done, failed) => {
    script.onload = done;
    script.onerror = failed;
  });
}
