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
  window = document.createElement("dialog");

  /** @param {Element} opening of the lesson */
  start(opening) {
    const opener = button(drawing(this.here));
    opener.className = "who";
    opener.setAttribute("aria-label", say("who_here", { shape: this.name(this.here) }));
    opener.title = say("who");
    opener.addEventListener("click", () => this.window.showModal());
    opening.append(opener);
    this.fill();
    document.body.append(this.window);
  }

  fill() {
    const heading = document.createElement("h2");
    heading.id = "who";
    heading.textContent = say("who");
    const says = document.createElement("p");
    says.textContent = say("who_says");
    const shapes = document.createElement("p");
    shapes.className = "shapes";
    shapes.append(...Object.keys(DRAWN).map((shape) => this.choice(shape)));
    const told = document.createElement("p");
    told.setAttribute("role", "status");
    const clear = button(say("who_clear", { shape: this.name(this.here) }));
    clear.addEventListener("click", () => this.clear(told));
    const close = button(say("close"));
    close.classList.add("filled");
    close.addEventListener("click", () => this.window.close());
    this.window.setAttribute("aria-labelledby", "who");
    this.window.append(heading, says, shapes, told, clear, " ", close);
  }

  /** @param {string} shape */
  choice(shape) {
    const choice = button(drawing(shape), ` ${this.name(shape)}`);
    choice.setAttribute("aria-pressed", String(shape === this.here));
    choice.addEventListener("click", () => {
      if (shape === this.here) return this.window.close();
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
