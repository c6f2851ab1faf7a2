/** The script a lesson page begins with: no more than its first picture needs. */
import { showBlocksOnly } from "./blocks-only.js";

showBlocksOnly(); // before anything is seen
