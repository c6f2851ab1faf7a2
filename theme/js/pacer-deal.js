import { deal } from "./deal.js";
import { make, makeButton } from "./make.js";
import { say } from "./say.js";

/**
 * Three cards for whoever is in the room. People pick together who does which; nobody is asked who
 * does it, nothing is counted up, and another deal is there at will.
 */
export class PacerDeal {
  /** @type {Element[]} */
  dealt = [];

  /**
   * @param {Element} lesson that holds the cards
   * @param {(card: HTMLElement) => void} countAlong
   */
  constructor(lesson, countAlong) {
    this.cards = cardsOf(lesson);
    this.countAlong = countAlong;
  }

  again() {
    this.dealt = deal(this.cards, this.dealt);
  }

  /** The dealt cards as a list. */
  view() {
    return make("ul", { className: "moves dealt" }, ...this.dealt.map((card) => this.shown(card)));
  }

  /** @param {Element} card */
  shown(card) {
    const made = make("li", { className: "card" }, ...copied(card));
    const covered = card.hasAttribute("data-covered");
    made.toggleAttribute("data-covered", covered);
    if (card instanceof HTMLElement && card.dataset.count && !covered) {
      made.append(make("p", {}, makeButton(say("count_with_me"), () => this.countAlong(card))));
    } else if (!card.matches("move-card")) made.append(make("p", {}, say("deal_choose_count")));
    return made;
  }
}

/**
 * The lesson's cards, one of each move, the first whose count the learner may see; with those of
 * the library that a lesson of few moves brings along.
 * @param {Element} lesson
 */
function cardsOf(lesson) {
  /** @type {HTMLElement[]} */
  const all = [...lesson.querySelectorAll(/** @type {"div"} */ ("move-card"))];
  const seen = [...all].sort((one, other) => Number(one.hasAttribute("data-covered")) - Number(other.hasAttribute("data-covered")));
  const own = seen.filter(({ dataset }, at) => seen.findIndex((first) => first.dataset.move === dataset.move) === at);
  const more = lesson.querySelector(/** @type {"template"} */ ("[data-more-moves]"))?.content.children ?? [];
  return [...own, ...more];
}

/**
 * What is seen of a card, without its buttons and with all that is opened closed.
 * @param {Element} card
 */
function copied(card) {
  const parts = [...card.children].filter((part) => !part.querySelector("button")).map((part) => /** @type {Element} */ (part.cloneNode(true)));
  for (const part of parts) for (const opened of part.querySelectorAll("details")) opened.open = false;
  return parts;
}
