/** Parts that are never torn, however tall: a row without its numbers is no question. */
const WHOLE = ".gap-row, .helps, .piles, fieldset, estimate-line, move-card";
/** What never stands last on a screen, without that which it is over. */
const HEADS = "h3, .holding";

/**
 * A stop in screens: as much of it as fits, in its order; what is taller than a screen alone is
 * opened into its parts, and what cannot be opened scrolls. It asks the page what fits, and nothing
 * of the kind of stop.
 */
export class StopScreens {
  /** @type {Element[][]} */
  screens = [];
  /** @type {Element[]} */
  known = [];

  /**
   * @param {Element} stop
   * @param {() => boolean} fits whether all that is shown does
   */
  constructor(stop, fits) {
    this.stop = stop;
    this.fits = fits;
    this.lay();
  }

  lay() {
    for (const part of this.stop.querySelectorAll("[data-away]")) part.removeAttribute("data-away");
    const waiting = this.seen(this.stop);
    /** @type {Element[]} */
    let screen = [];
    for (let part = waiting.shift(); part; part = waiting.shift()) {
      if (this.fit([...screen, part])) screen.push(part);
      else if (isOpenable(part) && !this.fit([part])) waiting.unshift(...this.seen(part));
      else screen = this.turn(screen, part);
    }
    if (screen.length || !this.screens.length) this.screens.push(screen);
  }

  /**
   * Ends a screen before a part that does not fit on it; gives the next one.
   * @param {Element[]} screen
   * @param {Element} part
   */
  turn(screen, part) {
    let over = screen.length;
    while (screen[over - 1]?.matches(HEADS)) over--;
    if (over) this.screens.push(screen.slice(0, over));
    return [...screen.slice(over), part];
  }

  /** @param {Element[]} parts */
  fit(parts) {
    this.show(parts);
    return this.fits();
  }

  /** The parts of something that are seen now; the stop's heading is on every screen. @param {Element} around */
  seen(around) {
    const parts = [...around.children].filter((part) => part.getClientRects().length && !part.matches(".stop-head"));
    this.known.push(...parts);
    return parts;
  }

  /** @param {Element[]} parts that are shown, all others not */
  show(parts) {
    for (const each of this.known) each.toggleAttribute("data-away", !parts.some((part) => each === part || each.contains(part) || part.contains(each)));
  }
}

/** @param {Element} part */
function isOpenable(part) {
  return part.childElementCount > 1 && !part.matches(WHOLE) && (part.matches("div, ul, ol, form") || part.localName.includes("-"));
}
