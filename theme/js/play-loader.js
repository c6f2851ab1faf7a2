import { loadScript } from "./load-script.js";

/**
 * What play brings to the page's own script.
 *
 * @typedef {object} Play
 * @property {(entry: import("./answer-reader.js").Entry) => string} notYet says what led to a wrong answer, and the next smaller step
 */

const source = document.currentScript; // known only while the page's script runs for the first time
/** @type {Promise<Play> | undefined} */
let coming;

/** Brings the script that only play needs, with its words, once it is needed. Can be asked again after a failure. */
export function bringPlay() {
  const beside = source instanceof HTMLScriptElement ? source.src : location.href;
  coming ??= new Promise((come, lost) => {
    document.addEventListener("play-here", (event) => come(/** @type {CustomEvent<Play>} */ (event).detail), { once: true });
    loadScript(new URL(`play-${document.documentElement.lang}.js`, beside).href).catch((failed) => {
      coming = undefined;
      lost(failed);
    });
  });
  return coming;
}

/**
 * Tells the page's own script that play has come: scripts that are loaded apart share nothing else.
 * @param {Play} play
 */
export function playIsHere(play) {
  document.dispatchEvent(new CustomEvent("play-here", { detail: play }));
}
