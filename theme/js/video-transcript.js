import { LiveElement } from "./live-element.js";
import { clock, lineAt, sentences } from "./transcript-lines.js";

/**
 * The captions as lines to read beside the video: the line that is said is marked and kept in
 * sight, and each leads to its moment. Where no captions can be had, the link to them stays.
 */
export class VideoTranscript extends LiveElement {
  static define() {
    customElements.define("video-transcript", this);
  }

  /** @type {import("./transcript-lines.js").Said[]} */
  lines = [];
  /** @type {HTMLButtonElement[]} */
  buttons = [];

  /** @param {AbortSignal} signal */
  connected(signal) {
    const details = this.closest("details");
    const video = this.closest("pause-player")?.querySelector("video");
    const source = video?.querySelector("track");
    if (!details || !video || !source) return;
    source.addEventListener("load", () => this.fill(source.track, video), { signal });
    const opened = () => {
      if (source.track.mode === "disabled") source.track.mode = "hidden"; // switched off, and read all the same
      this.fill(source.track, video);
    };
    details.addEventListener("toggle", opened, { signal });
    video.addEventListener("timeupdate", () => this.follow(video.currentTime), { signal });
    if (details.open) opened(); // before this script came
    else this.fill(source.track, video);
  }

  /**
   * @param {TextTrack} track
   * @param {HTMLVideoElement} video
   */
  fill(track, video) {
    if (this.buttons.length || !track.cues?.length) return;
    this.lines = sentences(/** @type {Iterable<VTTCue>} */ (/** @type {unknown} */ (track.cues)));
    this.buttons = this.lines.map(line);
    const box = document.createElement("div");
    box.className = "said";
    box.lang = track.language;
    box.append(...this.buttons);
    this.prepend(box);
    this.follow(video.currentTime);
  }

  /** @param {number} now seconds */
  follow(now) {
    const here = this.buttons[lineAt(this.lines, now)];
    const [box] = this.children;
    if (!box || here?.ariaCurrent) return;
    for (const button of this.buttons) button.ariaCurrent = button === here ? "true" : null;
    // The box moves and never the page; and not under a hand or a reader that is in it.
    if (here instanceof HTMLElement && !box.matches(":hover, :focus-within")) box.scrollTop = here.offsetTop - box.clientHeight / 3;
  }
}

/** @param {import("./transcript-lines.js").Said} said */
function line({ startTime, text }) {
  const button = document.createElement("button");
  button.type = "button";
  button.dataset.playFrom = String(startTime);
  const time = document.createElement("span");
  time.textContent = clock(startTime);
  button.append(time, ` ${text}`);
  return button;
}
