import { loadScript } from "./load-script.js";

/**
 * Brings the scripts that a page can wait for, once it is shown: an element names its own in
 * `data-later`. Without them the page is whole.
 */
export function bringLater() {
  // Not at `load`: a video that comes slowly holds that up, and its pauses are among what comes later.
  addEventListener("DOMContentLoaded", () => {
    const elements = [...document.querySelectorAll(/** @type {"div"} */ ("[data-later]"))];
    for (const address of new Set(elements.map(({ dataset }) => dataset.later ?? ""))) loadScript(address).catch(() => {});
  });
}
