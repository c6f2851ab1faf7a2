/**
 * How far a learner has come along the stops of a lesson. Knows no page.
 */
export class Progress {
  /**
   * Ids, in order.
   * @type {string[]}
   */
  stops = [];

  /** @param {Pick<import("./store.js").Store, "get" | "set">} store */
  constructor(store) {
    this.store = store;
  }

  /** @param {string} stop */
  isDone(stop) {
    return this.store.get(`done ${stop}`) !== "";
  }

  /**
   * A stop is done; the learner, if there, moves on to the next one that is not.
   * @param {string} stop
   */
  finish(stop) {
    const here = this.here();
    this.store.set(`done ${stop}`, "yes");
    if (here === stop) this.visit(this.stops.slice(this.stops.indexOf(stop)).find((later) => !this.isDone(later)) ?? stop);
  }

  /** @param {string} stop where the learner is now */
  visit(stop) {
    this.store.set("here", stop);
  }

  /** Where the learner was last, or the first stop that is not done; the last one when all are. */
  here() {
    const kept = this.store.get("here");
    if (this.stops.includes(kept)) return kept;
    return this.stops.find((stop) => !this.isDone(stop)) ?? this.stops[this.stops.length - 1];
  }
}
