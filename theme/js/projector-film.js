import { LiveElement } from "./live-element.js";

/** Asks for a part of the film, wherever it stands. */
const ASKS = "[data-play-from], [data-go-on]";

/**
 * The film on a screen of its own: it comes when a part of it is asked for or it is played, and
 * goes when the player halts at a stop or somebody moves on. The pauses are the player's.
 */
export class ProjectorFilm {
  /**
   * @param {LiveElement} view
   * @param {AbortSignal} signal
   */
  constructor(view, signal) {
    this.view = view;
    this.video = view.querySelector("video");
    const asked = (/** @type {Event} */ { target }) => target instanceof Element && target.closest(ASKS) && this.show(true);
    view.addEventListener("click", asked, { signal, capture: true }); // before the player plays and focuses what is seen by then
    this.video?.addEventListener("play", () => this.show(true), { signal });
    this.video?.addEventListener("ended", () => this.show(false), { signal });
  }

  get isShown() {
    return this.view.hasAttribute("data-film");
  }

  /** @param {boolean} shown */
  show(shown) {
    this.view.toggleAttribute("data-film", shown && Boolean(this.video));
    if (!shown) this.video?.pause();
  }
}
