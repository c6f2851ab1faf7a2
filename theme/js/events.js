/**
 * What elements tell one another, all of it; each event bubbles from where it happened.
 *
 * - `pause-reached` from a stop where the video has halted
 * - `gap-found` from a form whose answer is right, or is kept where nobody is told yet
 * - `count-along` from a move's card whose count is to be done together
 * - `deal-asked` from below the cards of moves, when three are to be dealt
 * - `lesson-cleared` to the lesson's thread, when all that was written is forgotten
 * - `kept-lesson-removed` from the list of kept lessons, when one was taken off the device
 */

/** @typedef {"pause-reached" | "gap-found" | "count-along" | "deal-asked" | "lesson-cleared" | "kept-lesson-removed"} Happening */

/**
 * @param {EventTarget | null | undefined} target where it happened
 * @param {Happening} happening
 */
export function tellOf(target, happening) {
  target?.dispatchEvent(new CustomEvent(happening, { bubbles: true }));
}

/**
 * @param {EventTarget | null | undefined} target where it is heard
 * @param {Happening} happening
 * @param {(where: Element) => void} then
 * @param {AbortSignal} signal
 */
export function hear(target, happening, then, signal) {
  target?.addEventListener(happening, ({ target: where }) => where instanceof Element && then(where), { signal });
}
