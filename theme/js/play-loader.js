import { loadScript } from "./load-script.js";

const here = document.currentScript; // known only while the page's script runs for the first time
/** @type {Promise<unknown> | undefined} */
let coming;

/** Brings the script that only play needs, with its words, once it is needed. Can be asked again after a failure. */
export function bringPlay() {
  const beside = here instanceof HTMLScriptElement ? here.src : location.href;
  coming ??= loadScript(new URL(`play-${document.documentElement.lang}.js`, beside).href).catch((lost) => {
    coming = undefined;
    throw lost;
  });
  return coming;
}
