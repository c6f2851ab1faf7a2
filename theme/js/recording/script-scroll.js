import { LiveElement } from "../live-element.js";
import { scriptPlace, wordsBefore, wordsRead } from "./scroll-place.js";

const EYES = 0.4; // of the window's height: where the words being read stand
const SIZES = [1.6, 1.9, 2.2, 2.6, 3, 3.6, 4.2]; // rem
const USUAL = 2;

/**
 * Moves a script up at a chosen pace, halting at each pause of the lesson. With reduced motion
 * nothing glides: the text steps to the next paragraph when its time has come.
 */
export class ScriptScroll extends LiveElement {
  static define() {
    customElements.define("script-scroll", this);
  }

  /** @type {HTMLElement[]} */
  parts = [];
  /** @type {number[]} */
  counts = [];
  words = 0;
  size = USUAL;
  current = -1;
  /** When the last step was taken; nothing while it halts. @type {number | undefined} */
  since;

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.parts = [...this.querySelectorAll(/** @type {"div"} */ ("[data-words]"))];
    this.counts = this.parts.map((part) => Number(part.dataset.words));
    const form = this.querySelector("form");
    if (!form || !this.parts.length) return;
    form.hidden = false;
    this.toggleAttribute("data-live", true);
    form.addEventListener("submit", (event) => (event.preventDefault(), this.toggle()), { signal });
    for (const button of this.querySelectorAll("[data-size]")) {
      button.addEventListener("click", () => this.resize(Number(button.getAttribute("data-size"))), { signal });
    }
    document.addEventListener("keydown", this.pressed, { signal });
    this.parts.forEach((part, index) => part.addEventListener("click", () => this.goTo(index), { signal }));
    signal.addEventListener("abort", () => this.halt());
  }

  /** Space starts and halts wherever the focus is, but where space already does something. */
  pressed = (/** @type {KeyboardEvent} */ event) => {
    const busy = event.target instanceof Element && event.target.closest("button, input, a, summary");
    if (event.key !== " " || busy) return;
    event.preventDefault();
    this.toggle();
  };

  toggle() {
    if (this.since === undefined) this.start();
    else this.halt();
  }

  start() {
    if (this.words >= wordsBefore(this.parts.length, this.counts)) this.words = 0;
    this.since = performance.now();
    this.name("halt");
    requestAnimationFrame(this.step);
  }

  halt() {
    this.since = undefined;
    this.name("start");
  }

  step = () => {
    if (this.since === undefined) return;
    const now = performance.now();
    const before = scriptPlace(this.words, this.counts).index;
    this.words += wordsRead(now - this.since, this.pace());
    this.since = now;
    const { index, share } = scriptPlace(this.words, this.counts);
    if (index > before && this.parts[before]?.hasAttribute("data-halts")) {
      this.words = wordsBefore(before + 1, this.counts); // the next words wait until asked for
      this.halt();
    } else if (share === 1) {
      this.halt();
    } else {
      requestAnimationFrame(this.step);
    }
    this.show();
  };

  /** @param {number} index of the paragraph to read from */
  goTo(index) {
    this.words = wordsBefore(index, this.counts);
    this.show();
  }

  show() {
    const { index, share } = scriptPlace(this.words, this.counts);
    const part = this.parts[index];
    if (!part) return;
    const steps = matchMedia("(prefers-reduced-motion: reduce)").matches;
    if (index !== this.current) {
      this.parts[this.current]?.removeAttribute("aria-current");
      part.setAttribute("aria-current", "true");
      this.current = index;
    } else if (steps) return;
    const box = part.getBoundingClientRect();
    const read = steps ? 0 : box.height * share;
    scrollTo({ top: scrollY + box.top + read - innerHeight * EYES, behavior: "instant" });
  }

  /** Words a minute; the page's own pace while the entry holds no pace. */
  pace() {
    const input = this.querySelector("input");
    const chosen = Number(input?.value);
    return chosen >= Number(input?.min) && chosen <= Number(input?.max) ? chosen : Number(input?.defaultValue);
  }

  /** @param {number} by one size larger or smaller */
  resize(by) {
    this.size = Math.max(0, Math.min(SIZES.length - 1, this.size + by));
    this.style.setProperty("--script", `${SIZES[this.size]}rem`);
  }

  /** @param {"start" | "halt"} what the button does now */
  name(what) {
    const button = this.querySelector("[data-start]");
    if (button) button.textContent = button.getAttribute(`data-${what}`);
  }
}
