/**
 * Brings a stop before the learner: all of its question in view, and what is pressed next begins there.
 * @param {Element | null | undefined} section
 */
export function showStop(section) {
  section?.scrollIntoView(); // the whole question, not its heading at the lower edge
  section?.querySelector("h2")?.focus({ preventScroll: true });
}

/**
 * Goes on to the next stop that is shown; from the last one of a class link, to what comes at the end.
 * @param {Element} section
 */
export function goAfter(section) {
  const stops = [...document.querySelectorAll(".stop")];
  const next = stops[stops.indexOf(section) + 1]?.querySelector("h2") ?? document.querySelector(/** @type {"button"} */ ("finish-code button"));
  next?.focus();
}

/**
 * Whether the stops that a class link shows end here, and those of the lesson do not.
 * @param {Element | null} section
 */
export function endsHere(section) {
  return section?.hasAttribute("data-last") ?? false;
}
