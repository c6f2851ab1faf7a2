import { LiveElement } from "./live-element.js";
import { Store } from "./store.js";

/**
 * Shows a working in blocks or along a number line, as the learner chose; the same in all lessons
 * on this device. Without script both are there.
 */
export class NumberLine extends LiveElement {
  static define() {
    customElements.define("number-line", this);
  }

  store = new Store("rows");

  /** @param {AbortSignal} signal */
  connected(signal) {
    const { dataset } = document.body; // the page wears the choice, the style sheet knows what it means
    const button = this.querySelector("button");
    if (button) button.hidden = false;
    dataset.working = this.store.get("working") || "blocks";
    const turn = () => {
      dataset.working = dataset.working === "line" ? "blocks" : "line";
      this.store.set("working", dataset.working);
    };
    button?.addEventListener("click", turn, { signal });
  }
}
