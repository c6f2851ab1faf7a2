/**
 * Brings a stop before the learner: all of its question in view, and what is pressed next begins there.
 * @param {Element | null | undefined} section
 */
export function showStop(section) {
  section?.scrollIntoView(); // the whole question, not its heading at the lower edge
  section?.querySelector("h2")?.focus({ preventScroll: true });
}
