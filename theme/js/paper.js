/** The one script of pages made for paper. */
import { showBlocksOnly } from "./blocks-only.js";
import { PrintButton } from "./print-button.js";

showBlocksOnly();
PrintButton.define();
