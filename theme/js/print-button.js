import { LiveElement } from "./live-element.js";

/** Opens the browser's print window; without JavaScript it stays hidden and the browser's own menu prints. */
export class PrintButton extends LiveElement {
  static define() {
    customElements.define("print-button", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.hidden = false;
    this.querySelector("button")?.addEventListener("click", () => print(), { signal });
  }
}
