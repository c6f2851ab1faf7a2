/** The one script of pages made for paper. */
import { showBlocksOnly } from "./blocks-only.js";
import { DealCards } from "./deal-cards.js";
import { PrintButton } from "./print-button.js";

showBlocksOnly();
DealCards.define();
PrintButton.define();
