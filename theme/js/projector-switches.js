import { turnLabel } from "./turn-label.js";

/**
 * Full screen, by the browser's own means, and *Blocks only* for this showing alone: what is kept
 * on the device stays as it is.
 * @param {Element} bar
 * @param {() => void} changed after which the room or what stands in it is another
 * @param {AbortSignal} signal
 */
export function offerSwitches(bar, changed, signal) {
  offerFullScreen(bar.querySelector("[data-full]"), signal);
  offerBlocks(bar.querySelector("[data-blocks]"), changed, signal);
}

/**
 * @param {Element | null} button
 * @param {AbortSignal} signal
 */
function offerFullScreen(button, signal) {
  const page = document.documentElement;
  if (!button || !document.fullscreenEnabled) return;
  button.removeAttribute("hidden");
  const turn = () => (document.fullscreenElement ? document.exitFullscreen() : page.requestFullscreen()).catch(() => {}); // refused: it stays as it is
  button.addEventListener("click", turn, { signal });
  document.addEventListener("fullscreenchange", () => turnLabel(button, document.fullscreenElement === page), { signal });
}

/**
 * @param {Element | null} button
 * @param {() => void} changed
 * @param {AbortSignal} signal
 */
function offerBlocks(button, changed, signal) {
  const page = document.documentElement;
  const show = () => button?.setAttribute("aria-pressed", String(page.hasAttribute("data-blocks-only")));
  const turn = () => {
    page.toggleAttribute("data-blocks-only");
    show();
    changed();
  };
  button?.addEventListener("click", turn, { signal });
  show();
}
