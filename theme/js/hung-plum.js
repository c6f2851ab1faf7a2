import { PLUM } from "./plum-outline.js";
import { svg } from "./svg.js";

// The shapes are those that the site draws covers with; a test holds these to them.
const SHINE = "M-6 11a1.4 5 0 1 1-.01 0z";
const LEAVES = {
  first: "M0 0a16 16 0 0 1 -24 -7a16 16 0 0 1 24 7z",
  second: "M0 0a16 16 0 0 1 24 -7a16 16 0 0 1 -24 7z",
};
const MARKS = {
  first: "M-7.2 -3.8a1.7 1.7 0 1 1-.01 0zM-12.48 -5.34a1.7 1.7 0 1 1-.01 0zM-17.76 -6.88a1.7 1.7 0 1 1-.01 0z",
  second: "M4.8 -5.7h1.6l3.2 7.2h-1.6zM10.08 -7.24h1.6l3.2 7.2h-1.6zM15.36 -8.78h1.6l3.2 7.2h-1.6z",
};

/**
 * A thread with a plum at its end, its leaf to the side that holds more.
 *
 * @typedef {object} Hung
 * @property {number} x where it is tied, in units of the picture
 * @property {number} y
 * @property {number} drop how long its thread is
 * @property {string} side `first`, `second`, or nothing where both hold the same
 * @property {number} size of the plum, 1 for a whole one
 *
 * @param {Hung} hung
 */
export function hungPlum({ x, y, drop, side, size }) {
  const all = svg("g", {});
  const plum = svg("g", { transform: `translate(${x} ${y + drop}) scale(${size})` });
  const fruit = svg("g", { class: "hung" });
  fruit.append(path("plum", PLUM), path("thread", SHINE));
  if (side === "first" || side === "second") fruit.append(path(side, LEAVES[side]), path("wash", MARKS[side]));
  plum.append(fruit);
  all.append(path("thread", `M${x - 1.5} ${y}h3v${drop}h-3z`), svg("circle", { class: "plum", cx: `${x}`, cy: `${y}`, r: "5" }), plum);
  return all;
}

/**
 * The line with hollow knots, as wide and as high as a cover for narrow screens.
 * @param {number} knots
 */
export function hollowKnots(knots) {
  const all = svg("svg", { class: "plums", viewBox: "0 0 320 100", "aria-hidden": "true" });
  all.append(path("thread", "M16 12.5H304V15.5H16z"));
  for (let at = 0; at < knots; at++) all.append(svg("circle", { cx: `${16 + (288 / knots) * (at + 0.5)}`, cy: "14", r: "6" }));
  return all;
}

/**
 * @param {string} part
 * @param {string} shape
 */
function path(part, shape) {
  return svg("path", { class: part, d: shape });
}
