/** The one script of pages made for paper. */
import { showBlocksOnly } from "./blocks-only.js";
import { DealCards } from "./deal-cards.js";
import { printForClass } from "./paper-for-class.js";
import { PrintButton } from "./print-button.js";

showBlocksOnly();
printForClass();
DealCards.define();
PrintButton.define();
