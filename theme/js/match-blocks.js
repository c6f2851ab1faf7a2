import { BlockMatching } from "./block-matching.js";
import { keys } from "./keys.js";
import { LiveElement } from "./live-element.js";
import { make, makeButton } from "./make.js";
import { say } from "./say.js";

const SHAPES = { 1000: "hundred", 100: "ten", 10: "one", 5: "half", 1: "tenth" };
/** How wide and how high each shape is, in the units of the drawings. */
const BOXES = /** @type {Record<string, [number, number]>} */ ({ hundred: [52, 52], ten: [7, 52], one: [7, 7], half: [7, 7], tenth: [2.5, 7] });
const BLOCKS = /** @type {Record<string, string>} */ (keys({ hundred: "block_hundred", ten: "block_ten", one: "block_one", half: "block_half", tenth: "block_tenth" }));
const HEARD = /** @type {Record<string, string>} */ (keys({ hundreds: "blocks_hundreds", tens: "blocks_tens", ones: "blocks_ones", tenths: "blocks_tenths" }));
const TOLD = keys({ laid: "match_laid", traded: "match_traded", opened: "match_opened" });
const NEAR = 24; // how far a finger may be from a small block
const DRAGGED = 10;

/** Lets a row's blocks be matched by hand: by a tap, by dragging, or by a button for each size. */
export class MatchBlocks extends LiveElement {
  static define() {
    customElements.define("match-blocks", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    const details = this.closest("details");
    details?.addEventListener("toggle", () => details.open && !this.piles && this.begin(), { signal });
  }

  begin() {
    const { first, second } = this.closest("form")?.dataset ?? {};
    const numbers = [first, second].map((number) => Math.round(Number(number) * 10));
    this.matching = new BlockMatching(/** @type {[number, number]} */ (numbers));
    this.piles = ["first", "second"].map((side) => make("div", { className: `blocks ${side}` }));
    this.said = make("p", {}, "");
    this.said.setAttribute("role", "status");
    const again = makeButton(say("match_again"), () => (this.begin(), this.querySelector(/** @type {"button"} */ ("button:last-child"))?.focus()));
    this.replaceChildren(make("p", {}, say("match_how")), ...this.piles, make("p", { className: "buttons" }, ...this.sizesToLay(numbers), again), this.said);
    for (const pile of this.piles) this.takeFrom(pile);
    this.show();
  }

  /**
   * A button for each size from the largest block to the smallest.
   * @param {number[]} numbers
   */
  sizesToLay(numbers) {
    const { sizes = [] } = this.matching ?? {};
    const there = sizes.filter((size, at) => this.matching?.loose.some((pile) => pile[at]) && Math.max(...numbers) >= size);
    const between = sizes.filter((size) => size <= Math.max(...there) && size >= Math.min(...there));
    return between.map((size) => makeButton(say("match_one", { block: this.named(size) }), () => this.lay(size)));
  }

  /** @param {number} size */
  named(size) {
    return say(BLOCKS[shapeOf(size)] ?? "");
  }

  /** @param {number} size */
  lay(size) {
    const { matching } = this;
    if (!matching) return;
    const happened = matching.match(matching.sizes.indexOf(size));
    this.show();
    const told = happened && say(TOLD[happened], { block: this.named(size) });
    const even = matching.left().every((left) => left === 0);
    this.said?.replaceChildren([told, matching.isDone() ? say(even ? "match_even" : "match_done") : ""].join(" ").trim() || say("match_other"));
  }

  show() {
    for (const [side, pile] of this.piles?.entries() ?? []) {
      const loose = this.matching?.loose[side]?.flatMap((count, at) => this.drawn(at, count, "loose")) ?? [];
      const laid = this.matching?.laid.flatMap((count, at) => this.drawn(at, count, "laid")) ?? [];
      pile.replaceChildren(...loose, ...laid);
      pile.setAttribute("role", "img");
      pile.setAttribute("aria-label", this.heard(side));
    }
  }

  /**
   * What of a side is not matched, for who hears it.
   * @param {number} side
   */
  heard(side) {
    const [hundreds = 0, tens = 0, ones = 0, finest = 0] = this.matching?.loose[side] ?? [];
    const counts = { hundreds, tens, ones, tenths: finest * Number(this.matching?.sizes[3]) };
    const heard = Object.entries(counts).flatMap(([size, n]) => (n ? [say(HEARD[size] ?? "", { n, number: n })] : []));
    return heard.join(", ") || say("blocks_none");
  }

  /**
   * @param {number} at which size
   * @param {number} count
   * @param {string} state
   */
  drawn(at, count, state) {
    const size = Number(this.matching?.sizes[at]);
    return Array.from({ length: count }, () => blockOf(size, state));
  }

  /**
   * Takes a block of a pile by pointer; it is laid by a tap, or where it is let go over the other pile.
   * @param {HTMLElement} pile
   */
  takeFrom(pile) {
    const other = this.piles?.find((one) => one !== pile);
    pile.onpointerdown = (down) => {
      const block = nearest(pile, down);
      if (!block) return;
      pile.setPointerCapture(down.pointerId);
      const moved = (/** @type {PointerEvent} */ now) => Math.hypot(now.clientX - down.clientX, now.clientY - down.clientY);
      pile.onpointermove = (now) => (block.style.transform = moved(now) > DRAGGED ? `translate(${now.clientX - down.clientX}px, ${now.clientY - down.clientY}px)` : "");
      pile.onpointercancel = () => ((block.style.transform = ""), (pile.onpointermove = pile.onpointerup = null));
      pile.onpointerup = (up) => {
        pile.onpointercancel?.(up);
        if (moved(up) <= DRAGGED || (other && distance(other, up) < NEAR)) this.lay(Number(block.dataset.size));
      };
    };
  }
}

/** @param {number} size in tenths */
function shapeOf(size) {
  return SHAPES[/** @type {1000 | 100 | 10 | 5 | 1} */ (size)];
}

/**
 * A block as the page draws it elsewhere, or its outline where the page brings no such shape.
 * @param {number} size in tenths
 * @param {string} state
 */
function blockOf(size, state) {
  const shape = shapeOf(size);
  const [width, height] = BOXES[shape] ?? [7, 7];
  const holder = make("span", { className: `block ${state}` });
  holder.dataset.size = String(size);
  const svg = svgElement("svg", { viewBox: `0 0 ${width} ${height}`, class: shape === "half" ? "one" : shape, "aria-hidden": "true" });
  svg.append(document.getElementById(shape) ? svgElement("use", { href: `#${shape}` }) : svgElement("rect", { x: 1, y: 1, width: width - 2, height: height - 2 }));
  holder.append(svg);
  return holder;
}

/**
 * @param {string} tag
 * @param {Record<string, string | number>} attributes
 */
function svgElement(tag, attributes) {
  const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
  return made;
}

/**
 * The loose block that a pointer means.
 * @param {HTMLElement} pile
 * @param {PointerEvent} point
 */
function nearest(pile, point) {
  const blocks = [...pile.querySelectorAll(/** @type {"span"} */ (".loose"))];
  const [block] = blocks.sort((one, other) => distance(one, point) - distance(other, point));
  return block && distance(block, point) < NEAR ? block : undefined;
}

/**
 * @param {Element} element
 * @param {PointerEvent} point
 */
function distance(element, { clientX, clientY }) {
  const { left, right, top, bottom } = element.getBoundingClientRect();
  return Math.hypot(Math.max(left - clientX, clientX - right, 0), Math.max(top - clientY, clientY - bottom, 0));
}
