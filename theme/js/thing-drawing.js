import { PLUM } from "./plum-outline.js";
import { svg } from "./svg.js";

/**
 * Each thing in a square of 24: what is filled, and what is a line.
 * @type {Record<string, [string, string]>}
 */
const THING_SHAPES = {
  boat: ["M2 15h20l-3.5 6h-13zM11.5 2v11.5h-9zM13.5 5.5l7 8h-7z", ""],
  kettle: ["M3 21.5c-1.5-5 1-9 4-9h7c3 0 5.5 4 4 9zM17 17.5l4-6h2.5l-4 9zM10.5 8.8a1.9 1.9 0 1 1-.01 0z", "M4.5 13C3 .5 18 .5 16.5 13"],
  wheel: [
    "M10.5 0h3v5h-3zM10.5 19h3v5h-3zM0 10.5h5v3H0zM19 10.5h5v3h-5zM2.5 4.6l2.1-2.1 3.5 3.5L6 8.1zM16 6l3.5-3.5 2.1 2.1L18.1 8.1zM6 16l2.1 2.1-3.5 3.5-2.1-2.1zM18.1 16l3.5 3.5-2.1 2.1L16 18.1z",
    "M12 4.5a7.5 7.5 0 1 1-.01 0zM12 4.5v15M5.5 8.2l13 7.6M18.5 8.2l-13 7.6",
  ],
  leaf: ["M4.5 19.5C3 9 9 3 21.5 2.5c0 12-6 18.5-17 17z", "M1.5 22.5l6-6"],
  pebble: ["M2 16.5c-.5-5 4-9.5 10-9.5s11 5 10 9.5-6 5-11 5-8.7-1.5-9-5z", ""],
  spoon: ["M14.5 3c3.5-2.5 8 0 7 5-.8 4-5 6.5-8.3 4.7s-2.7-6.7 1.3-9.7z", "M13 12 3 21.5"],
};

/** @param {string} thing */
export function thingDrawing(thing) {
  return thingPicture("0 0 24 24", thingGroup(thing, {}));
}

/**
 * The plum with a thing for its leaf.
 * @param {string} thing
 */
export function plumOfThing(thing) {
  const fruit = svg("path", { class: "fruit", d: PLUM, transform: "translate(12 16) scale(.75)" });
  const stalk = svg("path", { class: "stalk", d: "M12 15q4-4 9-2.5" });
  return thingPicture("2 0 44 40", fruit, stalk, thingGroup(thing, { transform: "translate(21 1)" }));
}

/**
 * @param {string} thing
 * @param {Record<string, string>} looks
 */
function thingGroup(thing, looks) {
  const [filled, line] = THING_SHAPES[thing] ?? ["", ""];
  const all = svg("g", { class: "thing", ...looks });
  all.append(svg("path", { d: filled }), svg("path", { class: "stalk", d: line }));
  return all;
}

/**
 * @param {string} box
 * @param {SVGElement[]} inside
 */
function thingPicture(box, ...inside) {
  const all = svg("svg", { viewBox: box, "aria-hidden": "true" });
  all.append(...inside);
  return all;
}
