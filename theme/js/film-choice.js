import { LiveElement } from "./live-element.js";
import { Store } from "./store.js";

/**
 * Which of a lesson's films plays, chosen for all lessons on this device. Without a choice the
 * smaller picture is taken where the browser is asked to save data. Without a script the films
 * are links.
 */
export class FilmChoice extends LiveElement {
  static define() {
    customElements.define("film-choice", this);
  }

  store = new Store("player");

  /** @param {AbortSignal} signal */
  connected(signal) {
    const video = this.closest("pause-player")?.querySelector("video");
    if (!video) return;
    const saves = /** @type {any} */ (navigator).connection?.saveData ? "smaller" : "file";
    const wanted = this.link(this.store.get("film") || saves) ?? this.link("file");
    if (wanted) this.show(video, wanted);
    this.addEventListener("click", (event) => this.choose(video, event), { signal });
  }

  /**
   * @param {HTMLVideoElement} video
   * @param {Event} event
   */
  choose(video, event) {
    const link = /** @type {Element} */ (event.target).closest("a");
    if (!link) return;
    event.preventDefault();
    this.store.set("film", link.dataset.film ?? "");
    this.show(video, link);
  }

  /**
   * @param {string} kind
   * @returns {HTMLAnchorElement | null}
   */
  link(kind) {
    return this.querySelector(`a[data-film="${CSS.escape(kind)}"]`);
  }

  /**
   * Goes on at the same moment in another film.
   * @param {HTMLVideoElement} video
   * @param {HTMLAnchorElement} link
   */
  show(video, link) {
    for (const one of this.querySelectorAll("a")) {
      if (one === link) one.setAttribute("aria-current", "true");
      else one.removeAttribute("aria-current");
    }
    if (video.src === link.href) return;
    const { currentTime, paused } = video;
    video.src = link.href;
    if (currentTime) video.currentTime = currentTime;
    if (!paused) video.play().catch(() => {}); // there may be no file; its controls say so
  }
}
