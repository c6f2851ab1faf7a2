import { Store } from "./store.js";

const NAME = "blocks-only";

/** Whether this device shows blocks, tens and moves, and leaves out what foods hold. */
export function isBlocksOnly() {
  return new Store("device").get(NAME) === "yes";
}

/** Lets the styles leave out whatever a page marks with `data-with-numbers`. */
export function showBlocksOnly() {
  document.documentElement.toggleAttribute("data-blocks-only", isBlocksOnly());
}

/** @param {boolean} wanted from now on, on every page of the site */
export function keepBlocksOnly(wanted) {
  new Store("device").set(NAME, wanted ? "yes" : "");
  showBlocksOnly();
}
