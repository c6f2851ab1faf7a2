import { LiveElement } from "../live-element.js";

const NEXT = new Set([" ", "ArrowRight", "ArrowDown", "PageDown", "Enter"]);
const BACK = new Set(["ArrowLeft", "ArrowUp", "PageUp"]);

/** Shows slides one by one, full screen where the browser lets it; without it they are a long page. */
export class FilmSlides extends LiveElement {
  static define() {
    customElements.define("film-slides", this);
  }

  /** @type {HTMLElement[]} */
  slides = [];
  at = 0;

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.slides = [...this.querySelectorAll(/** @type {"div"} */ (".slide"))];
    const button = this.querySelector("[data-show]");
    if (!button || !this.slides.length) return;
    button.removeAttribute("hidden");
    button.addEventListener("click", () => this.open(), { signal });
    const next = (/** @type {Event} */ { target }) => this.isShowing() && target !== button && this.go(this.at + 1);
    this.addEventListener("click", next, { signal });
    document.addEventListener("keydown", this.pressed, { signal });
    document.addEventListener("fullscreenchange", this.left, { signal });
  }

  pressed = (/** @type {KeyboardEvent} */ event) => {
    if (!this.isShowing() || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Escape") this.close();
    else if (NEXT.has(event.key)) this.go(this.at + 1);
    else if (BACK.has(event.key)) this.go(this.at - 1);
    else if (event.key === "Home") this.go(0);
    else if (event.key === "End") this.go(this.slides.length - 1);
    else return;
    event.preventDefault();
  };

  /** The browser takes Escape for itself while the screen is full, and tells only that it no longer is. */
  left = () => {
    if (!document.fullscreenElement && this.isShowing()) this.close();
  };

  open() {
    this.toggleAttribute("data-showing", true);
    const named = this.slides.findIndex((slide) => `#${slide.id}` === location.hash);
    this.go(Math.max(0, named));
    // Where the whole screen is refused, as in a frame, the window is filled all the same.
    this.requestFullscreen?.().catch(() => {});
  }

  close() {
    this.toggleAttribute("data-showing", false);
    if (document.fullscreenElement) void document.exitFullscreen();
    this.slides[this.at]?.scrollIntoView();
  }

  /** @param {number} number of the slide, from 0; beyond either end nothing moves */
  go(number) {
    this.at = Math.max(0, Math.min(this.slides.length - 1, number));
    this.slides.forEach((slide, index) => slide.toggleAttribute("data-here", index === this.at));
    this.slides[this.at]?.focus();
    history.replaceState(null, "", `#${this.slides[this.at]?.id}`);
  }

  isShowing() {
    return this.hasAttribute("data-showing");
  }
}
