import { make, makeButton } from "./make.js";
import { askPlay } from "./play-asked.js";
import { say } from "./say.js";

/** One quiet line below the cards of moves: three of them dealt, for whoever is in the room. */
export class DealOffer {
  static define() {
    for (const cards of document.querySelectorAll("ul.moves:has(move-card)")) cards.after(make("p", { className: "deal" }, offered()));
  }
}

function offered() {
  const pressed = makeButton(say("deal_three"), () => askPlay(pressed, say("deal_three"), "deal-asked"));
  return pressed;
}
