/** What a page does otherwise where another site shows it. */

/** Keeps nothing on the device, wherever the page stands: for every script, storage is one that is forbidden. */
export function keepNothing() {
  Object.defineProperty(window, "localStorage", { value: null });
}

/**
 * Checks answers where a frame may send no form: there a browser tells nobody that one was to be
 * sent (HTML, 4.10.22.3), so the press of its button is told, which Enter in an entry is too.
 */
export function checkInFrame() {
  document.addEventListener("click", (event) => {
    const button = event.target instanceof Element ? event.target.closest("button") : null;
    if (button?.type !== "submit" || !button.form) return;
    event.preventDefault();
    button.form.dispatchEvent(new Event("submit", { cancelable: true, bubbles: true }));
  });
}

/**
 * Elements of a lesson page that do nothing here: the thread keeps what is done, the chart fetches figures.
 * @param {string[]} names
 */
export function leaveStill(...names) {
  for (const name of names) customElements.define(name, class extends HTMLElement {});
}

/** Marks what is found, as the thread of a lesson does. */
export function markFound() {
  const found = (/** @type {Event} */ { target }) => target instanceof Element && target.closest("form")?.setAttribute("data-found", "");
  document.addEventListener("gap-found", found, { capture: true });
}

/** A way inside of the page stays in the frame; the way to the lesson leads to the stop that is shown. */
export function stayInFrame() {
  addEventListener("DOMContentLoaded", () => {
    for (const link of document.querySelectorAll(/** @type {"a"} */ ('a[href^="#"]'))) link.target = "_self";
    const lesson = document.querySelector(/** @type {"a"} */ ("a[data-whole-lesson]"));
    const lead = () => lesson && (lesson.hash = location.hash);
    addEventListener("hashchange", lead);
    lead();
  });
}
