/** The script of the screen pages that are no lesson. */
import { showBlocksOnly } from "./blocks-only.js";
import { bringLater } from "./bring-later.js";

showBlocksOnly(); // before anything is seen
bringLater();
