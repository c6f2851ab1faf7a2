import { askFirst } from "./ask-first.js";
import { button } from "./button.js";
import { forget } from "./forget.js";
import { keys } from "./keys.js";
import { thingHere } from "./lesson-store.js";
import { make, makeButton } from "./make.js";
import { say } from "./say.js";
import { Store } from "./store.js";
import { plumOfThing, thingDrawing } from "./thing-drawing.js";
import { everyThing, KEPT_AS, namesOf } from "./things.js";

/** @type {Record<string, string>} */
const THING_NAMES = keys({ boat: "thing_boat", kettle: "thing_kettle", wheel: "thing_wheel", leaf: "thing_leaf", pebble: "thing_pebble", spoon: "thing_spoon" });

/**
 * Lets learners who share a device keep their work apart: each picks a thing of Larkmead, and no
 * name. The first thing is there without a choice.
 */
export class WhoIsHere {
  static define() {
    const opening = document.querySelector("lesson-thread .opening");
    if (opening) new WhoIsHere().start(opening);
  }

  here = thingHere();
  opener = button(plumOfThing(this.here), make("span", { textContent: say("who_here", { thing: nameOf(this.here) }) }));
  row = document.createElement("div");
  clearing = make("div", { className: "clearing" });
  told = document.createElement("p");

  /** @param {Element} opening of the lesson */
  start(opening) {
    this.opener.className = "who";
    this.opener.title = say("who");
    this.opener.addEventListener("click", () => this.show(this.row.hidden));
    this.row.addEventListener("keydown", (event) => this.leave(event));
    this.fill();
    this.show(false);
    opening.prepend(this.opener, this.row);
  }

  /** @param {boolean} shown the row of things, in the page and not over it */
  show(shown) {
    this.row.hidden = !shown;
    this.opener.setAttribute("aria-expanded", String(shown));
    if (!shown) this.offer(); // a question that nobody answered is taken back
  }

  /** @param {KeyboardEvent} event in the row */
  leave(event) {
    if (event.key !== "Escape") return;
    this.show(false);
    this.opener.focus();
  }

  fill() {
    const heading = make("p", { textContent: say("who") });
    heading.id = "who";
    const things = make("div", {}, ...everyThing().map((thing) => this.choice(thing)));
    const says = make("p", { className: "quiet", textContent: say("who_says") });
    this.told.setAttribute("role", "status");
    this.row.className = "things";
    this.row.setAttribute("role", "group");
    this.row.setAttribute("aria-labelledby", heading.id);
    this.row.append(heading, things, says, this.clearing, this.told);
  }

  /** @param {string} thing */
  choice(thing) {
    const choice = button(thingDrawing(thing), make("span", { textContent: nameOf(thing) }));
    choice.setAttribute("aria-pressed", String(thing === this.here));
    choice.addEventListener("click", () => {
      if (thing === this.here) return this.show(false);
      new Store("device").set(KEPT_AS, thing);
      location.reload(); // every part of the page looks into its store when it begins
    });
    return choice;
  }

  /** The way to clear, below a line and apart from the things: nobody takes it for the way out. */
  offer() {
    const clear = makeButton(say("who_clear", { thing: nameOf(this.here) }), () => this.ask());
    this.clearing.replaceChildren(clear);
    return clear;
  }

  ask() {
    const yes = makeButton(say("who_clear_yes"), () => this.clear());
    const no = makeButton(say("clear_all_no"), () => this.offer().focus());
    this.told.textContent = "";
    askFirst(this.clearing, say("who_clear_asks", { thing: nameOf(this.here) }), yes, no);
  }

  clear() {
    for (const name of namesOf(this.here)) forget(`${name}/`); // in every lesson
    /** @type {import("./lesson-thread.js").LessonThread | null} */ (document.querySelector("lesson-thread"))?.clear();
    this.offer().focus();
    this.told.textContent = say("who_cleared", { thing: nameOf(this.here) });
  }
}

/** @param {string} thing */
function nameOf(thing) {
  return say(THING_NAMES[thing] ?? "");
}
