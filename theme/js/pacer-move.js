/**
 * What a move's card on the page tells the pacer, so that no text is said twice.
 *
 * @typedef {object} Move
 * @property {HTMLElement} card
 * @property {string} id in the library of moves
 * @property {string} name
 * @property {number} count
 * @property {number} pace counts a minute
 * @property {string} left what the count leaves over; or nothing
 * @property {string} team that the count belongs to everybody: the stop's own line
 * @property {string} sitting how to do it on a chair
 * @property {HTMLElement | undefined} next the next card with a count that the learner may see
 */

/**
 * @param {HTMLElement} card
 * @returns {Move}
 */
export function readMove(card) {
  const { move = "", count, pace, left = "" } = card.dataset;
  /** @type {HTMLElement[]} */
  const cards = [...(card.closest("section")?.querySelectorAll(/** @type {"div"} */ ("move-card")) ?? [])];
  return {
    card,
    id: move,
    name: card.querySelector("h3")?.lastChild?.textContent?.trim() ?? "",
    count: Number(count),
    pace: Number(pace),
    left,
    team: card.closest("section")?.querySelector(".team")?.textContent ?? "",
    sitting: card.querySelector("[data-seated] p:last-child")?.textContent ?? "",
    next: cards.slice(cards.indexOf(card) + 1).find((later) => !later.hasAttribute("data-covered")),
  };
}

/**
 * Copies of the move's figures.
 * @param {Move} move
 * @param {boolean} sitting
 */
export function figuresOf({ card }, sitting) {
  const figures = [...card.querySelectorAll(sitting ? "[data-seated] .figure" : ".figure")];
  return figures.filter((figure) => sitting || !figure.closest("[data-seated]")).map((figure) => figure.cloneNode(true));
}

/**
 * What to look at before anyone moves: the stop's own lines.
 * @param {Element} inside of the stop
 */
export function roomCheck(inside) {
  return [...(inside.closest("section")?.querySelectorAll(".before li") ?? [])].map((line) => line.cloneNode(true));
}
