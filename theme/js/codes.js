/** The script of the page that reads finish codes, and the only file of its bundle that does anything by being loaded. */
import { showBlocksOnly } from "./blocks-only.js";
import { bringLater } from "./bring-later.js";
import { CodeReader } from "./code-reader.js";

showBlocksOnly(); // before anything is seen
bringLater();
CodeReader.define();
