/** The things of Larkmead that stand for learners: their names, and what they were called before. */

/** Under which name a device keeps who is here; it is called so since things were shapes. */
export const KEPT_AS = "shape";

/**
 * Each thing, with the names its work is kept under: the newest first. Nothing a family wrote under
 * an older one is lost.
 * @type {Map<string, string[]>}
 */
const THINGS = new Map([
  ["boat", ["boat", "circle"]],
  ["kettle", ["kettle", "square"]],
  ["wheel", ["wheel", "triangle"]],
  ["leaf", ["leaf"]],
  ["pebble", ["pebble"]],
  ["spoon", ["spoon"]],
]);

export function everyThing() {
  return [...THINGS.keys()];
}

/**
 * The thing of a name, also of one of before; the first where nobody knows it.
 * @param {string} name
 */
export function thingOf(name) {
  return everyThing().find((thing) => namesOf(thing).includes(name)) ?? "boat";
}

/**
 * Every name that a thing's work may be kept under.
 * @param {string} thing
 */
export function namesOf(thing) {
  return THINGS.get(thing) ?? [thing];
}
