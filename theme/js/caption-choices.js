import { keys } from "./keys.js";
import { LiveElement } from "./live-element.js";
import { say } from "./say.js";
import { Store } from "./store.js";

const NAMES = keys({ size: "captions_size", ground: "captions_ground" });
/** What can be chosen; the first where nothing was. */
const LOOKS = {
  size: keys({ middle: "captions_size_middle", small: "captions_size_small", large: "captions_size_large" }),
  ground: keys({ dark: "captions_ground_dark", light: "captions_ground_light", none: "captions_ground_none" }),
};

/**
 * How large the captions are and what is behind them, for all lessons on this device. The video
 * wears each choice as an attribute of its name; the style sheet knows what it means.
 */
export class CaptionChoices extends LiveElement {
  static define() {
    customElements.define("caption-choices", this);
  }

  store = new Store("captions");

  /** @param {AbortSignal} signal */
  connected(signal) {
    const details = this.closest("details");
    const video = this.closest("pause-player")?.querySelector("video");
    if (!details || !video) return;
    this.replaceChildren();
    for (const name of /** @type {(keyof typeof LOOKS)[]} */ (Object.keys(LOOKS))) this.append(this.choice(video, name, signal));
    const summary = details.querySelector("summary") ?? document.createElement("summary");
    summary.textContent = say("captions");
    details.prepend(summary);
    details.hidden = false;
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {keyof typeof LOOKS} name
   * @param {AbortSignal} signal
   */
  choice(video, name, signal) {
    const kept = this.store.get(name);
    const select = document.createElement("select");
    select.append(...Object.entries(LOOKS[name]).map(([value, key]) => new Option(say(key), value, false, value === kept)));
    select.addEventListener("change", () => {
      video.dataset[name] = select.value;
      this.store.set(name, select.value);
    }, { signal });
    video.dataset[name] = select.value;
    const label = document.createElement("label");
    label.append(say(NAMES[name]), " ", select);
    return label;
  }
}
