import { LiveElement } from "../live-element.js";
import { Store } from "../store.js";

/** Keeps on this device which numbers of a lesson are filmed, until they are cleared or become others. */
export class FilmTicks extends LiveElement {
  static define() {
    customElements.define("film-ticks", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    const boxes = [...this.querySelectorAll("input")];
    const button = this.querySelector("button");
    const store = new Store(`filming-${this.dataset.lesson}`);
    for (const box of boxes) {
      box.checked = store.get(box.name) !== "";
      box.addEventListener("change", () => store.set(box.name, box.checked ? "filmed" : ""), { signal });
    }
    if (!button) return;
    button.hidden = false;
    const clear = () => (store.clear(), boxes.forEach((box) => (box.checked = false)));
    button.addEventListener("click", clear, { signal });
  }
}
