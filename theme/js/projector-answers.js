import { MoveCard } from "../stops/move/element.js";

/** What is opened to see an answer, and counts that are covered; hints, and how a move is done, are none. */
const ANSWERS = "details:not([data-hint], .moves details), move-card[data-row]";

/** The answers on one screen: shown one at a time, only when somebody asks, and covered together. */
export class ProjectorAnswers {
  /** @param {Element} stop */
  constructor(stop) {
    this.answers = [...stop.querySelectorAll(ANSWERS)].filter((each) => each.getClientRects().length);
  }

  get areAllShown() {
    return this.answers.every(isShown);
  }

  /** One more, or none of them again once all are shown. */
  turn() {
    const next = this.answers.find((each) => !isShown(each));
    if (next) show(next, true);
    else for (const each of this.answers) show(each, false);
    next?.scrollIntoView({ block: "nearest" });
  }
}

/** @param {Element} answer */
function isShown(answer) {
  return answer instanceof HTMLDetailsElement ? answer.open : !answer.hasAttribute("data-covered");
}

/**
 * @param {Element} answer
 * @param {boolean} shown
 */
function show(answer, shown) {
  if (answer instanceof HTMLDetailsElement) answer.open = shown;
  else if (answer instanceof MoveCard) answer.cover(!shown);
}
