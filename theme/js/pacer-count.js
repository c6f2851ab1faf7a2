import { make, makeButton, makeSwitch } from "./make.js";
import { Beeps } from "./pacer-beeps.js";
import { atPace, dueAt, nextPace, numberAt, pause, run, still } from "./pacer-clock.js";
import { figuresOf } from "./pacer-move.js";
import { say } from "./say.js";
import { Store } from "./store.js";

/**
 * The count of one move: large figures at the learner's pace, on a chair or standing, with soft
 * beeps or quiet. What it shows comes from the time alone, at every look.
 */
export class PacerCount {
  store = new Store("pacer");
  beeps = new Beeps();
  /** @type {Record<string, boolean>} */
  chosen = {};
  timer = 0;
  shown = -1;
  isOver = false;
  number = make("b");
  heard = make("p", { className: "unseen" });
  state = make("p", { className: "quiet" });
  sitting = make("p");
  quiet = make("p");
  figures = make("div", { className: "poses" });
  pace = make("output");
  go = makeButton("", () => this.goOrPause(), "filled");
  beepSwitch = makeSwitch(say("pacer_beeps"), this.isOn("beeps"), (on) => this.set("beeps", on));

  /**
   * @param {import("./pacer-move.js").Move} move
   * @param {() => void} done
   */
  constructor(move, done) {
    this.move = move;
    this.done = done;
    this.pacing = still(Number(this.store.get(`pace ${move.id}`)) || move.pace);
    this.heard.setAttribute("role", "status");
    this.view = make("div", { className: "pacer-count" }, ...this.parts());
    this.look();
    this.dress();
  }

  parts() {
    const { count } = this.move;
    const slower = makeButton(say("pacer_slower"), () => this.step(-1));
    const faster = makeButton(say("pacer_faster"), () => this.step(1));
    return [
      make("div", { className: "pacer-stage" }, this.figures, make("p", { className: "pacer-number" }, this.number, ` ${say("pacer_of", { count: String(count) })}`)),
      this.heard,
      this.state,
      make("p", { className: "buttons" }, this.go),
      make("p", { className: "pacer-pace" }, slower, this.pace, faster),
      makeSwitch(say("pacer_sitting"), this.isOn("sitting"), (on) => this.set("sitting", on)),
      this.sitting,
      this.beepSwitch,
      makeSwitch(say("pacer_quiet"), this.isOn("quiet"), (on) => this.set("quiet", on)),
      this.quiet,
    ];
  }

  goOrPause() {
    const now = performance.now();
    if (this.pacing.runs) return this.halt();
    if (this.hasBeeps()) this.beeps.allow();
    this.pacing = run(this.pacing, now);
    this.keepAwake();
    this.look();
    this.dress();
  }

  halt() {
    this.pacing = pause(this.pacing, performance.now());
    this.lock?.release().catch(() => {});
    this.look();
    this.dress();
  }

  /** Shows the number that is due now, and comes back when the next one is. */
  look() {
    if (this.isOver) return;
    const now = performance.now();
    const number = numberAt(this.pacing, now);
    clearTimeout(this.timer);
    this.beeps.hush();
    if (number > this.move.count) return this.finish();
    if (number !== this.shown) this.show(number);
    if (!this.pacing.runs) return;
    const wait = dueAt(this.pacing, number + 1) - now;
    this.timer = window.setTimeout(() => this.look(), wait);
    if (this.hasBeeps() && number < this.move.count) this.beeps.comeIn(wait);
  }

  finish() {
    this.isOver = true;
    this.lock?.release().catch(() => {});
    this.done();
  }

  /** @param {number} number */
  show(number) {
    this.shown = number;
    this.number.textContent = String(number);
    this.view.dataset.beat = number % 2 ? "odd" : "even";
    if (number === 1) this.dress();
    const step = this.move.count > 30 ? 10 : 5; // every beat would be too much to hear
    if (number && (number % step === 0 || number === this.move.count)) this.heard.textContent = String(number);
  }

  /** What depends on the learner's choices and on whether it runs. */
  dress() {
    const { runs, pace } = this.pacing;
    const begun = this.shown > 0;
    const sitting = this.isOn("sitting");
    this.go.textContent = runs ? say("pacer_pause") : begun ? say("pacer_on") : say("pacer_start");
    this.state.textContent = runs && !begun ? say("pacer_get_ready") : !runs && begun ? say("pacer_paused", { number: String(this.shown) }) : "\u00a0";
    this.pace.textContent = say("pacer_pace", { pace: String(pace) });
    this.figures.replaceChildren(...figuresOf(this.move, sitting));
    this.sitting.textContent = sitting ? this.move.sitting : "";
    this.quiet.textContent = this.isOn("quiet") ? say("pacer_quiet_says") : "";
    const box = this.beepSwitch.querySelector("input");
    if (box) box.disabled = this.isOn("quiet");
  }

  /** @param {number} steps */
  step(steps) {
    const pace = nextPace(this.pacing.pace, steps, this.move.pace);
    this.pacing = atPace(this.pacing, performance.now(), pace);
    this.store.set(`pace ${this.move.id}`, String(pace));
    this.look();
    this.dress();
  }

  /**
   * @param {string} choice
   * @param {boolean} on
   */
  set(choice, on) {
    this.chosen[choice] = on;
    this.store.set(choice, on ? "on" : "off");
    if (this.hasBeeps()) this.beeps.allow(); // this is a tap
    this.look();
    this.dress();
  }

  /** @param {string} choice */
  isOn(choice) {
    return (this.chosen[choice] ??= this.store.get(choice) === "on");
  }

  hasBeeps() {
    return this.isOn("beeps") && !this.isOn("quiet");
  }

  /** The screen stays lit while it is counted on, where a browser can do that. */
  async keepAwake() {
    this.lock = await navigator.wakeLock?.request("screen").catch(() => undefined);
  }
}
