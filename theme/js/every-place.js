/**
 * Each place of a lesson's thread with what belongs there, also where a class link leaves it out.
 * @param {Element} thread
 */
export function everyPlace(thread) {
  return [...thread.querySelectorAll(".thread > li")].map((place) => place.querySelector(/** @type {"template"} */ ("template[data-left-out]"))?.content ?? place);
}
