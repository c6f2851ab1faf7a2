/** The script of the page where stamps are typed, and the only file of its bundle that does anything by being loaded. */
import { showBlocksOnly } from "./blocks-only.js";
import { bringLater } from "./bring-later.js";
import { StampReader } from "./stamp-reader.js";

showBlocksOnly(); // before anything is seen
bringLater();
StampReader.define();
