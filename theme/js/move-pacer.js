import { LiveElement } from "./live-element.js";
import { loadStyle } from "./load-style.js";
import { make, makeButton } from "./make.js";
import { PacerCount } from "./pacer-count.js";
import { PacerDeal } from "./pacer-deal.js";
import { readMove, roomCheck } from "./pacer-move.js";
import { say } from "./say.js";

/**
 * Counts a move along with the learner, in a window over the page: the room is looked at first,
 * once a visit; then the count; then a rest for as long as the learner likes.
 */
export class MovePacer extends LiveElement {
  static define() {
    customElements.define("move-pacer", this);
    const pacer = new MovePacer();
    // for as long as the page is there
    document.addEventListener("count-along", ({ target }) => target instanceof HTMLElement && pacer.open(target));
    document.addEventListener("deal-asked", ({ target }) => target instanceof HTMLElement && pacer.deal(target));
  }

  /** @type {Promise<unknown> | undefined} */
  styled;
  isRoomChecked = false;
  heading = make("h2", { id: "pacer-name", tabIndex: -1 });
  screen = make("div");
  /** The one place where the window tells who listens what the eye sees; the end is told by the heading. */
  heard = make("p", { className: "unseen" });
  dialog = make("dialog", { className: "pacer" }, this.heading, this.screen, this.heard);
  /** @type {PacerCount | undefined} */
  count;
  /** @type {PacerDeal | undefined} */
  dealt;

  /** @param {AbortSignal} signal */
  connected(signal) {
    this.append(this.dialog);
    this.heard.setAttribute("role", "status");
    this.dialog.setAttribute("aria-labelledby", this.heading.id);
    this.dialog.addEventListener("close", () => this.count?.halt(), { signal });
    document.addEventListener("visibilitychange", () => this.dialog.open && this.count?.look(), { signal });
  }

  /** @param {HTMLElement} card */
  async open(card) {
    const move = readMove(card);
    await this.comeUp();
    this.dealt = undefined;
    if (!move.count) return this.rest(move, say("pacer_none"));
    this.look(card, () => this.begin(move));
  }

  /** @param {HTMLElement} asked below the cards of a stop */
  async deal(asked) {
    await this.comeUp();
    this.dealt = new PacerDeal(asked.closest("lesson-thread") ?? document.body, (card) => this.begin(readMove(card)));
    this.look(asked, () => this.dealAgain());
  }

  async comeUp() {
    await (this.styled ??= loadStyle("play.css"));
    if (!this.isConnected) document.body.append(this);
    if (!this.dialog.open) this.dialog.showModal();
  }

  /**
   * Before the first count or deal of a visit the room is looked at.
   * @param {HTMLElement} inside of the stop
   * @param {() => void} then
   */
  look(inside, then) {
    const lines = roomCheck(inside);
    const on = () => ((this.isRoomChecked = true), then());
    if (this.isRoomChecked || !lines.length) return on();
    this.show(say("pacer_room"), make("ul", {}, ...lines), row(makeButton(say("pacer_ready"), on, "filled"), this.closing(say("pacer_not_now"))));
  }

  dealAgain() {
    this.dealt?.again();
    this.lay();
  }

  /** Lays the cards that are dealt. */
  lay() {
    const { dealt } = this;
    if (!dealt) return;
    const again = makeButton(say("deal_again"), () => this.dealAgain(), "filled");
    const told = [say("deal_says"), say("move_team")].map((text) => make("p", {}, text));
    this.show(say("deal_title"), ...told, dealt.view(), row(again, this.closing(say("pacer_close"))));
  }

  /** @param {import("./pacer-move.js").Move} move */
  begin(move) {
    this.count?.halt();
    this.count = new PacerCount(move, (text) => (this.heard.textContent = text), () => this.rest(move, say("pacer_all", { count: String(move.count) })));
    this.show(move.name, this.count.view, make("p", {}, move.team), row(this.closing(say("pacer_close"))));
    this.count.go.focus();
  }

  /**
   * A calm end: the next move waits until the learner asks for it.
   * @param {import("./pacer-move.js").Move} move
   * @param {string} text
   */
  rest(move, text) {
    const { next, left, team } = move;
    const on = next && makeButton(say("pacer_next", { move: readMove(next).name }), () => this.open(next), "filled");
    const further = this.dealt ? makeButton(say("deal_back"), () => this.lay(), "filled") : on;
    const again = move.count ? [makeButton(say("pacer_again"), () => this.begin(move))] : [];
    const leftOver = left ? [make("p", {}, say("pacer_left", { left }))] : [];
    const ways = further ? [further, ...again, this.closing(say("pacer_close"))] : [this.closing(say("pacer_close"), "filled"), ...again];
    this.show(text, ...leftOver, make("p", {}, team), make("p", {}, say("pacer_rest")), row(...ways));
  }

  /**
   * @param {string} name
   * @param {HTMLElement[]} parts
   */
  show(name, ...parts) {
    this.heading.textContent = name;
    this.heard.textContent = "";
    this.screen.replaceChildren(...parts);
    this.dialog.scrollTop = 0; // the screen before may have been longer
    this.heading.focus();
  }

  /**
   * @param {string} text
   * @param {string} [look]
   */
  closing(text, look) {
    return makeButton(text, () => this.dialog.close(), look);
  }
}

/** @param {HTMLElement[]} buttons */
function row(...buttons) {
  return make("p", { className: "buttons" }, ...buttons);
}
