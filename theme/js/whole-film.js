import { announce } from "./announce.js";
import { make } from "./make.js";
import { megabytes } from "./megabytes.js";
import { say } from "./say.js";

const LARGEST = 60_000_000; // bytes: more than this a phone may not hold at once

/**
 * Some hosts answer no parts of a file, and there a browser plays a film from its beginning alone.
 * So once somebody wants to be elsewhere in it, it is fetched whole, and then every place is open.
 */
export class WholeFilm {
  isComing = false;
  said = make("p", { className: "band", hidden: true });

  /**
   * @param {HTMLVideoElement} video
   * @param {AbortSignal} signal
   */
  constructor(video, signal) {
    this.video = video;
    this.signal = signal;
    video.after(this.said);
    signal.addEventListener("abort", () => this.forget());
  }

  /** Is there no way to another place in the film? Before its length is known, nobody can say. */
  get isNeeded() {
    const { duration, seekable } = this.video;
    return Number.isFinite(duration) && !(seekable.length && seekable.end(seekable.length - 1) > 0);
  }

  /**
   * Fetch the film and go to a moment in it; says whether that was possible.
   * @param {number} seconds
   */
  async bring(seconds) {
    if (this.isComing) return false;
    this.isComing = true;
    this.video.pause();
    try {
      const film = await this.fetchWhole();
      this.tell(film ? "" : say("film_from_start"));
      if (film) await this.show(film, seconds);
      return Boolean(film);
    } catch {
      this.tell(say("film_from_start"));
      return false;
    } finally {
      this.isComing = false;
    }
  }

  /** The film, if a phone can hold it. */
  async fetchWhole() {
    const { signal } = this;
    const answer = await fetch(this.video.currentSrc, { signal });
    const size = Number(answer.headers.get("Content-Length"));
    if (!answer.ok || size > LARGEST) {
      await answer.body?.cancel();
      return null;
    }
    this.tell(say("film_coming", { size: megabytes(size) }));
    return answer.blob();
  }

  /**
   * @param {Blob} film
   * @param {number} seconds
   */
  async show(film, seconds) {
    const { video } = this;
    this.forget();
    this.address = URL.createObjectURL(film);
    video.src = this.address;
    await new Promise((go) => video.addEventListener("loadedmetadata", go, { once: true }));
    video.currentTime = seconds;
  }

  /** @param {string} text that is seen and heard; nothing where there is nothing to say */
  tell(text) {
    this.said.textContent = text;
    this.said.hidden = !text;
    if (text) announce(text);
  }

  forget() {
    if (this.address) URL.revokeObjectURL(this.address);
  }
}
