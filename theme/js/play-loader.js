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

/**
 * Brings the script that only play needs, with its words, once it is needed. Can be asked again after a failure.
 * Several scripts of a page have a loader each: the first asks for it, the others wait or find it here.
 */
export function bringPlay() {
  coming ??= new Promise((come, lost) => {
    document.addEventListener("play-here", (event) => come(/** @type {CustomEvent<Play>} */ (event).detail), { once: true });
    document.addEventListener("play-lost", () => ((coming = undefined), lost(new Error("play did not come"))), { once: true });
    if (document.dispatchEvent(new Event("play-asked", { cancelable: true }))) load();
  });
  return coming;
}

function load() {
  const beside = source instanceof HTMLScriptElement ? source.src : location.href;
  const waiting = new AbortController();
  document.addEventListener("play-asked", (event) => event.preventDefault(), { signal: waiting.signal });
  loadScript(new URL(`play-${document.documentElement.lang}.js`, beside).href).catch(() => {
    waiting.abort();
    document.dispatchEvent(new Event("play-lost"));
  });
}

/**
 * Tells the page's own scripts that play has come, and each that asks later: scripts that are loaded apart share nothing else.
 * @param {Play} play
 */
export function playIsHere(play) {
  const tell = () => document.dispatchEvent(new CustomEvent("play-here", { detail: play }));
  document.addEventListener("play-asked", (event) => (event.preventDefault(), tell()));
  tell();
}
