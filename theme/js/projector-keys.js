/**
 * What a key asks of the page for a projector. Only keys that write nothing: whoever dictates or
 * types loses none (WCAG 2.2, 2.1.4). Page keys are what a hand-held remote sends.
 *
 * @typedef {"next" | "back" | "answer"} Asked
 */

/** @type {Record<string, Asked>} */
const MEANS = { ArrowRight: "next", " ": "next", PageDown: "next", ArrowLeft: "back", PageUp: "back", Enter: "answer" };
/** @type {Record<string, Asked>} */
const MIRRORED = { ArrowRight: "back", ArrowLeft: "next" };
/** What has keys of its own, and what answers to the space bar and Enter by itself. */
const OWN_KEYS = "input, select, textarea, video, dialog, [contenteditable]";
const PRESSED = "a, button, summary";

/**
 * @param {KeyboardEvent} event
 * @returns {Asked | undefined} nothing where the key belongs to somebody else
 */
export function askedByKey({ key, target, defaultPrevented, altKey, ctrlKey, metaKey, shiftKey }) {
  if (defaultPrevented || altKey || ctrlKey || metaKey || shiftKey) return undefined;
  if (target instanceof Element && (target.closest(OWN_KEYS) || (/^( |Enter)$/.test(key) && target.closest(PRESSED)))) return undefined;
  return (document.documentElement.dir === "rtl" && MIRRORED[key]) || MEANS[key];
}
