import { button } from "./button.js";
import { forget } from "./forget.js";
import { keys } from "./keys.js";
import { shapeHere } from "./lesson-store.js";
import { say } from "./say.js";
import { Store } from "./store.js";

/** Shapes that stand for learners, drawn in a square of 24. */
const DRAWN = {
  circle: "M12 3a9 9 0 1 0 .01 0z",
  square: "M4 4h16v16H4z",
  triangle: "M12 3 22 20H2z",
  leaf: "M4 20C3 9 9 3 21 3c0 12-6 18-17 17z",
};

const SHAPES = keys({ circle: "shape_circle", square: "shape_square", triangle: "shape_triangle", leaf: "shape_leaf" });

/**
 * Lets learners who share a device keep their work apart: each picks a shape, and no name. The
 * first shape is there without a choice.
 */
export class WhoIsHere {
  static define() {
    const opening = document.querySelector("lesson-thread .opening");
    if (opening) new WhoIsHere().start(opening);
  }

  here = shapeHere();
  opener = button(drawing(this.here));
  row = document.createElement("div");

  /** @param {Element} opening of the lesson */
  start(opening) {
    this.opener.className = "who";
    this.opener.setAttribute("aria-label", say("who_here", { shape: this.name(this.here) }));
    this.opener.title = say("who");
    this.opener.addEventListener("click", () => this.show(this.row.hidden));
    this.row.addEventListener("keydown", (event) => this.leave(event));
    this.fill();
    this.show(false);
    opening.prepend(this.opener, this.row);
  }

  /** @param {boolean} shown the row of shapes, in the page and not over it */
  show(shown) {
    this.row.hidden = !shown;
    this.opener.setAttribute("aria-expanded", String(shown));
  }

  /** @param {KeyboardEvent} event in the row */
  leave(event) {
    if (event.key !== "Escape") return;
    this.show(false);
    this.opener.focus();
  }

  fill() {
    const heading = document.createElement("p");
    heading.id = "who";
    heading.textContent = say("who");
    const shapes = document.createElement("div");
    shapes.append(...Object.keys(DRAWN).map((shape) => this.choice(shape)));
    const says = document.createElement("p");
    says.className = "quiet";
    says.textContent = say("who_says");
    const told = document.createElement("p");
    told.setAttribute("role", "status");
    const clear = button(say("who_clear", { shape: this.name(this.here) }));
    clear.addEventListener("click", () => this.clear(told));
    this.row.className = "shapes";
    this.row.setAttribute("role", "group");
    this.row.setAttribute("aria-labelledby", "who");
    this.row.append(heading, shapes, says, clear, told);
  }

  /** @param {string} shape */
  choice(shape) {
    const name = document.createElement("span");
    name.textContent = this.name(shape);
    const choice = button(drawing(shape), name);
    choice.setAttribute("aria-pressed", String(shape === this.here));
    choice.addEventListener("click", () => {
      if (shape === this.here) return this.show(false);
      new Store("device").set("shape", shape);
      location.reload(); // every part of the page looks into its store when it begins
    });
    return choice;
  }

  /** @param {HTMLElement} told where it is said that it is done */
  clear(told) {
    forget(`${this.here}/`); // in every lesson
    /** @type {import("./lesson-thread.js").LessonThread | null} */ (document.querySelector("lesson-thread"))?.clear();
    told.textContent = say("who_cleared", { shape: this.name(this.here) });
  }

  /** @param {string} shape */
  name(shape) {
    return say(SHAPES[/** @type {keyof typeof SHAPES} */ (shape)] ?? SHAPES.circle);
  }
}

/** @param {string} shape */
function drawing(shape) {
  const picture = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  picture.setAttribute("viewBox", "0 0 24 24");
  picture.setAttribute("aria-hidden", "true");
  const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
  path.setAttribute("d", DRAWN[/** @type {keyof typeof DRAWN} */ (shape)] ?? DRAWN.circle);
  picture.append(path);
  return picture;
}
