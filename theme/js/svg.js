/**
 * An element of a drawing.
 * @param {string} name
 * @param {Record<string, string>} looks its attributes
 */
export function svg(name, looks) {
  const made = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(looks)) made.setAttribute(key, value);
  return made;
}
