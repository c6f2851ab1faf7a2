/** Whether this device shows blocks, tens and moves, and leaves out what foods hold. */
import { readStore, storeKey } from "./read-store.js";

/** Under which name the choice is kept, for everyone on this device. */
export const BLOCKS_ONLY = "blocks-only";

export function isBlocksOnly() {
  return readStore(storeKey("device"))[BLOCKS_ONLY] === "yes";
}

/** Lets the styles leave out whatever a page marks with `data-with-numbers`. */
export function showBlocksOnly() {
  document.documentElement.toggleAttribute("data-blocks-only", isBlocksOnly());
}
