/**
 * The stop that a link means by a name: one that it has, or had before.
 * @template {Element} Stop
 * @param {Stop[]} stops
 * @param {string} name
 */
export function stopNamed(stops, name) {
  const had = (/** @type {Stop} */ stop) => [...stop.querySelectorAll(".formerly")].some(({ id }) => id === name);
  return stops.find(({ id }) => id === name) ?? stops.find(had);
}
