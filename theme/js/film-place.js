import { button } from "./button.js";
import { hear } from "./events.js";
import { lessonStore } from "./lesson-store.js";
import { say } from "./say.js";
import { clock } from "./transcript-lines.js";

const STEP = 5; // seconds of film: so often the place is kept anew, and who has seen less begins anew

/**
 * Where in the film somebody was: kept on the device for whoever is here, cleared with the lesson,
 * and offered when the page is opened again.
 */
export class FilmPlace {
  store = lessonStore();
  kept = Number(this.store.get("film")) || 0;
  offer = button();
  isCleared = false;

  /**
   * @param {HTMLVideoElement} video
   * @param {(seconds: number) => void} goOn
   * @param {AbortSignal} signal
   */
  constructor(video, goOn, signal) {
    this.video = video;
    const keep = () => this.keep(0.1);
    video.addEventListener("timeupdate", () => this.keep(STEP), { signal });
    for (const happened of ["pause", "ended"]) video.addEventListener(happened, keep, { signal });
    addEventListener("pagehide", keep, { signal });
    video.addEventListener("play", () => this.begin(), { signal });
    video.addEventListener("seeking", () => this.hide(), { signal });
    hear(document, "lesson-cleared", () => this.clear(), signal);
    signal.addEventListener("abort", () => this.offer.remove());
    if (this.kept > STEP && !video.currentTime && video.paused) this.show(goOn);
  }

  /** @param {(seconds: number) => void} goOn */
  show(goOn) {
    const { kept, offer } = this;
    offer.classList.add("go-on-film");
    offer.textContent = say("go_on_from", { at: clock(kept) });
    offer.onclick = () => goOn(kept);
    this.video.after(offer);
  }

  hide() {
    this.offer.remove();
  }

  begin() {
    this.isCleared = false;
    this.hide();
  }

  clear() {
    this.isCleared = true; // until it plays anew: what is forgotten stays so
    this.kept = 0;
    this.hide();
  }

  /**
   * Keeps the place; at the end there is none to go on from.
   * @param {number} least seconds of film from the place that is kept
   */
  keep(least) {
    const { currentTime, ended, played } = this.video;
    const now = ended ? 0 : currentTime;
    if (this.isCleared || !played.length || Math.abs(now - this.kept) < least) return;
    this.kept = now;
    this.store.set("film", ended ? "" : String(Math.floor(now * 1000) / 1000));
  }
}
