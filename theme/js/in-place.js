/**
 * Changes the page above something without moving it under the finger or the eye.
 * @param {Element} element that stays where it is seen
 * @param {() => void} change
 */
export function inPlace(element, change) {
  const before = element.getBoundingClientRect().top;
  change();
  scrollBy({ top: element.getBoundingClientRect().top - before, behavior: "instant" });
}
