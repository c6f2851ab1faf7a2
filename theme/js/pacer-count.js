import { make, makeButton, makeSwitch } from "./make.js";
import { BeatSound } from "./pacer-beat-sound.js";
import { PacerBob } from "./pacer-bob.js";
import { atPace, beatsAt, dueAt, keptPace, nextPace, numberAt, pause, run, still } from "./pacer-clock.js";
import { figuresOf } from "./pacer-move.js";
import { drawnSound, keptSound, soundChoice } from "./pacer-sound-choice.js";
import { PacerTens } from "./pacer-tens.js";
import { say } from "./say.js";
import { Store } from "./store.js";

/**
 * The count of one move: large figures and a plumb bob at the learner's pace, on a chair or
 * standing, with a soft sound or quiet. What it shows comes from the time alone, at every look.
 */
export class PacerCount {
  store = new Store("pacer");
  sounds = new BeatSound();
  /** @type {Record<string, string>} */
  chosen = {};
  timer = 0;
  shown = -1;
  isOver = false;
  number = make("b");
  state = make("p", { className: "pacer-state quiet", ariaHidden: "true" }); // it is told as well
  beat = make("span", { className: "pacer-beat", ariaHidden: "true" });
  sitting = make("p");
  quiet = make("p");
  figures = make("div", { className: "poses" });
  pace = make("b");
  go = makeButton("", () => this.goOrPause(), "filled");
  bob = new PacerBob(() => beatsAt(this.pacing, performance.now()));

  /**
   * @param {import("./pacer-move.js").Move} move
   * @param {(text: string) => void} tell says a text to who listens
   * @param {() => void} done
   */
  constructor(move, tell, done) {
    this.move = move;
    this.tell = tell;
    this.done = done;
    this.pacing = still(keptPace(this.store.get(`pace ${move.id}`), move.pace));
    this.tens = new PacerTens(move.count);
    this.view = make("div", { className: "pacer-count" }, ...this.parts());
    this.look();
    this.dress();
  }

  parts() {
    const { count } = this.move;
    const slower = makeButton(say("pacer_slower"), () => this.step(-1));
    const faster = makeButton(say("pacer_faster"), () => this.step(1));
    const swings = make("div", { className: "pacer-swing" }, this.bob.view, this.beat);
    const counted = make("p", { className: "pacer-number" }, this.number, ` ${say("pacer_of", { count: String(count) })}`);
    return [
      make("div", { className: "pacer-stage" }, this.figures, swings, counted, this.tens.view),
      this.state,
      make("p", { className: "buttons" }, this.go),
      make("p", { className: "pacer-pace" }, slower, this.pace, faster),
      makeSwitch(say("pacer_sitting"), this.isSitting(), (on) => this.set("sitting", on ? "on" : "off")),
      this.sitting,
      soundChoice(this.sound(), (sound) => this.listen(sound)),
      this.quiet,
    ];
  }

  goOrPause() {
    if (this.pacing.runs) return this.halt();
    if (this.sound() !== "quiet") this.sounds.allow();
    this.tell(this.shown ? say("pacer_goes_on", { number: String(this.shown) }) : say("pacer_get_ready"));
    this.pacing = run(this.pacing, performance.now());
    this.keepAwake();
    this.look();
    this.dress();
  }

  halt() {
    const ran = this.pacing.runs && !this.isOver;
    this.pacing = pause(this.pacing, performance.now());
    this.lock?.release().catch(() => {});
    this.sounds.hush();
    this.look();
    this.dress();
    if (ran) this.tell(say("pacer_paused", { number: String(this.shown) }));
  }

  /** Shows the number that is due now, and comes back when the next one is. */
  look() {
    if (this.isOver) return;
    const now = performance.now();
    const number = numberAt(this.pacing, now);
    clearTimeout(this.timer);
    if (number > this.move.count) return this.finish();
    if (number !== this.shown) this.show(number);
    if (!this.pacing.runs) return this.bob.halt();
    const wait = dueAt(this.pacing, number + 1) - now;
    this.timer = window.setTimeout(() => this.look(), wait);
    this.bob.swing();
    if (number < this.move.count) this.sounds.comeIn(this.sound(), number + 1, wait);
  }

  finish() {
    this.isOver = true;
    this.bob.halt();
    this.lock?.release().catch(() => {});
    this.done();
  }

  /** @param {number} number */
  show(number) {
    this.shown = number;
    this.number.textContent = String(number);
    this.tens.show(this.move.count - number);
    this.view.dataset.beat = number % 2 ? "odd" : "even";
    if (number) this.beat.replaceChildren(make("i", {}, drawnSound(this.sound()))); // a new one, which fades anew
    if (number === 1) this.dress();
    const step = this.move.count > 30 ? 10 : 5; // every beat would be too much to hear
    if (number === 1 || (number && (number % step === 0 || number === this.move.count))) this.tell(String(number));
  }

  /** What depends on the learner's choices and on whether it runs. */
  dress() {
    const { runs, pace } = this.pacing;
    const begun = this.shown > 0;
    const sitting = this.isSitting();
    this.go.textContent = runs ? say("pacer_pause") : begun ? say("pacer_on") : say("pacer_start");
    this.state.textContent = runs && !begun ? say("pacer_get_ready") : !runs && begun ? say("pacer_paused", { number: String(this.shown) }) : "";
    this.pace.textContent = say("pacer_pace", { pace: String(pace) });
    this.figures.replaceChildren(...figuresOf(this.move, sitting));
    this.sitting.textContent = sitting ? this.move.sitting : "";
    this.quiet.textContent = this.sound() === "quiet" ? say("pacer_quiet_says") : "";
  }

  /** @param {number} steps */
  step(steps) {
    const pace = nextPace(this.pacing.pace, steps, this.move.pace);
    this.pacing = atPace(this.pacing, performance.now(), pace);
    this.store.set(`pace ${this.move.id}`, String(pace));
    this.sounds.hush();
    this.look();
    this.dress();
    this.tell(String(this.pace.textContent));
  }

  /** @param {string} sound which is heard at once, so that the choice can be made by ear */
  listen(sound) {
    this.sounds.hush();
    if (sound !== "quiet") this.sounds.allow(); // this is a tap
    this.sounds.comeIn(sound, this.shown, 50);
    this.set("sound", sound);
  }

  /**
   * @param {"sitting" | "sound"} choice
   * @param {string} way
   */
  set(choice, way) {
    this.chosen[choice] = way;
    this.store.set(choice, way);
    this.look();
    this.dress();
  }

  isSitting() {
    return (this.chosen.sitting ??= this.store.get("sitting")) === "on";
  }

  sound() {
    return (this.chosen.sound ??= keptSound(this.store.get("sound")));
  }

  /** The screen stays lit while it is counted on, where a browser can do that. */
  async keepAwake() {
    this.lock = await navigator.wakeLock?.request("screen").catch(() => undefined);
  }
}
