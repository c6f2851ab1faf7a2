/** The script of the screen pages, and the first that runs. */
import { showBlocksOnly } from "./blocks-only.js";
import { bringLater } from "./bring-later.js";

showBlocksOnly(); // before anything is seen
bringLater();
