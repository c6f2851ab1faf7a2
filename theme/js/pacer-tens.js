import { svg } from "./svg.js";

const CELL = 5; // units of the picture, as in all base-ten blocks
const ROD = 8; // a rod and the room to the next
const FOOT = 54; // where the rods stand
const WALK = 28; // room to walk off in
const SECONDS = 0.7;

/**
 * What is still to count, in tens and ones. With each count one block comes down and walks off;
 * none is left at the end.
 */
export class PacerTens {
  standing = svg("path", { class: "wash" });
  walker = svg("path", { class: "walks", d: `M0 0h${CELL}v-${CELL}h-${CELL}zM1.5 0v3.5M3.5 0v3.5` });
  still = matchMedia("(prefers-reduced-motion: reduce)");

  /** @param {number} count how many there are at first */
  constructor(count) {
    this.width = Math.ceil(count / 10) * ROD + WALK;
    this.view = svg("svg", { class: "pacer-tens", viewBox: `0 0 ${this.width} ${FOOT + 5}`, "aria-hidden": "true" });
    this.view.append(svg("path", { class: "ground", d: `M0 ${FOOT + 4}h${this.width}` }), this.standing, this.walker);
    this.left = count;
    this.standing.setAttribute("d", blocksLeft(count));
  }

  /** @param {number} left how many are still to count */
  show(left) {
    if (left === this.left) return;
    const goes = left < this.left;
    this.left = left;
    this.standing.setAttribute("d", blocksLeft(left));
    if (goes && !this.still.matches) this.walkOff(left);
  }

  /**
   * The block that stood last comes down and goes, in small steps.
   * @param {number} place of it, counted from 0
   */
  walkOff(place) {
    const { x, y } = placeOf(place);
    const way = this.width - x;
    const at = (/** @type {number} */ share, /** @type {number} */ height) => ({ transform: `translate(${x + way * share}px, ${height}px)`, opacity: 1 });
    const steps = [0.15, 0.3, 0.45, 0.6, 0.75, 0.9].map((share, step) => at(share, FOOT - (step % 2) * 3));
    this.walker.animate([at(0, y), ...steps, { ...at(1, FOOT), opacity: 0 }], SECONDS * 1000);
  }
}

/**
 * As many blocks as are left, each ten of them a rod, from the foot up.
 * @param {number} left
 */
export function blocksLeft(left) {
  let drawing = "";
  for (let place = 0; place < left; place++) {
    const { x, y } = placeOf(place);
    drawing += `M${x} ${y}h${CELL}v-${CELL}h-${CELL}z`;
  }
  return drawing;
}

/** @param {number} place counted from 0 */
function placeOf(place) {
  return { x: 1 + Math.floor(place / 10) * ROD, y: FOOT - (place % 10) * CELL };
}
