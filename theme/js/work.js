/** What a lesson page needs from its first stop to work at. */
import { DealOffer } from "./deal-offer.js";
import { MatchBlocks } from "./match-blocks.js";
import { GapCalculator } from "../stops/compare/element.js";
import { MoveCard } from "../stops/move/element.js";

MoveCard.define(); // before the rows that tell it what was found already
DealOffer.define();
GapCalculator.define();
MatchBlocks.define();
