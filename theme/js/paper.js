/** The one script of pages made for paper. */
import { PrintButton } from "./print-button.js";

PrintButton.define();
