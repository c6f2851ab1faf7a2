import { deal } from "./deal.js";
import { LiveElement } from "./live-element.js";

/**
 * Deals three of the printed cards on the screen, for who has no printer at hand; as often as
 * anyone likes. Its line says how to deal by hand.
 */
export class DealCards extends LiveElement {
  static define() {
    customElements.define("deal-cards", this);
  }

  /** @type {Element[]} */
  dealt = [];

  /** @param {AbortSignal} signal */
  connected(signal) {
    const asked = this.querySelector("button");
    asked?.removeAttribute("hidden");
    asked?.addEventListener("click", () => this.again(), { signal });
  }

  again() {
    this.dealt = deal(this.cards(), this.dealt);
    const list = this.querySelector("ul");
    list?.replaceChildren(...this.dealt.map((card) => card.cloneNode(true)));
    list?.removeAttribute("hidden");
    const told = this.querySelector("[role=status]");
    if (told) told.textContent = this.dealt.map(nameOf).join(", ");
  }

  /** The cards of the sheets, one of each move, and what the library adds where they are few. */
  cards() {
    const all = [...document.querySelectorAll("main .card")];
    const own = all.filter((card, at) => all.findIndex((first) => nameOf(first) === nameOf(card)) === at);
    return [...own, ...(this.querySelector("template")?.content.querySelectorAll(".card") ?? [])];
  }
}

/** @param {Element} card */
function nameOf(card) {
  return card.querySelector("h2")?.textContent ?? "";
}
