import { Store } from "./store.js";
import { tell } from "./tell.js";

const LOOKS = { size: ["middle", "small", "large"], ground: ["dark", "light", "none"] };

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
    const details = this.closest("details");
    const video = this.closest("pause-player")?.querySelector("video");
    if (!details || !video || this.children.length) return;
    for (const [name, values] of Object.entries(LOOKS)) this.append(this.choice(video, name, values));
    const summary = document.createElement("summary");
    summary.textContent = tell("captions");
    details.prepend(summary);
    details.hidden = false;
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {string} name
   * @param {string[]} values the first one where none was chosen
   */
  choice(video, name, values) {
    const kept = this.store.get(name);
    const select = document.createElement("select");
    select.append(...values.map((value) => new Option(tell(`captions_${name}_${value}`), value, false, value === kept)));
    select.addEventListener("change", () => {
      video.dataset[name] = select.value;
      this.store.set(name, select.value);
    });
    video.dataset[name] = select.value;
    const label = document.createElement("label");
    label.append(tell(`captions_${name}`), " ", select);
    return label;
  }
}
