/** The script a lesson page begins with: no more than its first picture needs. */
import { showBlocksOnly } from "./blocks-only.js";

showBlocksOnly(); // before anything is seen
// A class link may ask for it too; once the stops come, the thread looks whether it is one.
if (location.hash.includes("blocks=only")) document.documentElement.toggleAttribute("data-blocks-only", true);
