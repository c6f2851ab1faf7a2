import { Store } from "./store.js";

/**
 * How large the captions are and what is behind them, for all lessons on this device. The video
 * wears each choice as an attribute of its name; the style sheet knows what it means.
 */
export class CaptionChoices extends HTMLElement {
  static define() {
    customElements.define("caption-choices", this);
  }

  store = new Store("captions");

  connectedCallback() {
    const video = this.closest("pause-player")?.querySelector("video");
    if (!video) return;
    for (const select of this.querySelectorAll("select")) {
      const { name } = select;
      const kept = this.store.get(name);
      if ([...select.options].some(({ value }) => value === kept)) select.value = kept;
      video.dataset[name] = select.value;
      select.addEventListener("change", () => {
        video.dataset[name] = select.value;
        this.store.set(name, select.value);
      });
    }
    this.closest("details")?.removeAttribute("hidden");
  }
}
