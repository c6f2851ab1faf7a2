/**
 * Two numbers in base-ten blocks, matched block by block: what is left is the gap. Numbers are in
 * tenths; where all that is finer than a one is halves, the smallest block is a half. Knows no page.
 */
export class BlockMatching {
  /** @param {[number, number]} numbers */
  constructor(numbers) {
    const finest = numbers.every((number) => number % 5 === 0) ? 5 : 1;
    this.sizes = [1000, 100, 10, finest];
    this.loose = numbers.map((number) => this.piled(number));
    this.laid = this.sizes.map(() => 0);
  }

  /** @param {number} number */
  piled(number) {
    return this.sizes.map((size, at) => Math.floor((at ? number % Number(this.sizes[at - 1]) : number) / size));
  }

  /**
   * Lays a block of a size on one of the same size on the other side. Where the other side has only
   * larger ones, one of those is opened first; where it has only smaller ones, the block itself is.
   * @param {number} at which size
   * @returns {"laid" | "traded" | "opened" | ""}
   */
  match(at) {
    const [first = [], second = []] = this.loose;
    if (!first[at] && !second[at]) return "";
    const other = first[at] ? second : first;
    const traded = !other[at];
    if (traded && !this.openInto(other, at)) return this.openItself(first[at] ? first : second, other, at);
    for (const pile of [first, second]) pile[at] = Number(pile[at]) - 1;
    this.laid[at] = Number(this.laid[at]) + 1;
    return traded ? "traded" : "laid";
  }

  /**
   * Opens the next larger block of a pile, and again, until there are blocks of a size.
   * @param {number[]} pile
   * @param {number} at
   */
  openInto(pile, at) {
    const larger = at - 1 - pile.slice(0, at).reverse().findIndex((count) => count > 0);
    if (larger === at) return false; // none was found
    for (let open = larger; open < at; open += 1) this.open(pile, open);
    return true;
  }

  /**
   * @param {number[]} pile
   * @param {number[]} other
   * @param {number} at
   */
  openItself(pile, other, at) {
    if (!other.some((count) => count > 0)) return ""; // all of the other side is matched: this is left
    this.open(pile, at);
    return /** @type {const} */ ("opened");
  }

  /**
   * @param {number[]} pile
   * @param {number} at
   */
  open(pile, at) {
    pile[at] = Number(pile[at]) - 1;
    pile[at + 1] = Number(pile[at + 1]) + Number(this.sizes[at]) / Number(this.sizes[at + 1]);
  }

  /** Whether all of one side is matched. */
  isDone() {
    return this.loose.some((pile) => pile.every((count) => count === 0));
  }

  /** What is not matched, of both sides, in tenths: the gap, once all of one side is matched. */
  left() {
    return this.loose.map((pile) => pile.reduce((sum, count, at) => sum + count * Number(this.sizes[at]), 0));
  }
}
