import { announce } from "./announce.js";
import { button } from "./button.js";
import { tellOf } from "./events.js";
import { make } from "./make.js";
import { bringPlay } from "./play-loader.js";
import { say } from "./say.js";

/** One quiet line below the cards of moves: three of them dealt, for whoever is in the room. */
export class DealOffer {
  static define() {
    for (const cards of document.querySelectorAll("ul.moves:has(move-card)")) new DealOffer().start(cards);
  }

  pressed = button(say("deal_three"));

  /** @param {Element} cards the list that it stands below */
  start(cards) {
    this.pressed.onclick = () => this.ask();
    cards.after(make("p", { className: "deal" }, this.pressed));
  }

  async ask() {
    try {
      await bringPlay();
      this.pressed.textContent = say("deal_three");
      tellOf(this.pressed, "deal-asked");
    } catch {
      this.pressed.textContent = say("play_failed");
      announce(say("play_failed"));
    }
  }
}
