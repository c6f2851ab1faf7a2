import { readStore } from "./read-store.js";

/**
 * Lets what was kept of a stop under an address it had before be found under that of today; where there
 * is some under the newer one, what that says stands.
 * @param {string} key of the lesson's store
 */
export function leadStopsOn(key) {
  const names = formerStops();
  if (!names.size) return;
  const kept = Object.entries(readStore(key));
  const led = kept.map(([name, text]) => [named(name, names), name === "here" ? named(text, names) : text]);
  const isNew = (/** @type {unknown} */ _, /** @type {number} */ at) => led[at]?.[0] === kept[at]?.[0];
  const now = Object.fromEntries([...led, ...led.filter(isNew)]);
  if (led.every(([name, text], at) => name === kept[at]?.[0] && text === kept[at]?.[1])) return;
  try {
    localStorage.setItem(key, JSON.stringify(now));
  } catch {
    // full or forbidden: it stays as it is
  }
}

/** Today's address of each stop by those it had before. */
function formerStops() {
  return new Map([...document.querySelectorAll(".stop > .formerly")].map(({ id, parentElement }) => [id, parentElement?.id ?? ""]));
}

/**
 * What is kept is named by its stop, or by what stands in it: `lunch--total gap`.
 * @param {string} name
 * @param {Map<string, string>} names
 */
function named(name, names) {
  const word = (/** @type {string} */ one) => one.replace(/^.*?(?=--|$)/, (stop) => names.get(stop) ?? stop);
  return name.split(" ").map(word).join(" ");
}
