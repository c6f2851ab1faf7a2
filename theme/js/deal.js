const DEALT = 3;

/**
 * Deals three cards, or all there are where they are fewer; never the same cards in the same order
 * as before, where there is another way. Knows no page.
 * @template Card
 * @param {Card[]} cards
 * @param {Card[]} [before] the deal before
 * @param {() => number} [chance] at least 0 and below 1
 * @returns {Card[]}
 */
export function deal(cards, before = [], chance = Math.random) {
  const dealt = shuffled(cards, chance).slice(0, DEALT);
  const isSame = dealt.length === before.length && dealt.every((card, at) => card === before[at]);
  return isSame && dealt.length > 1 ? [...dealt.slice(1), ...dealt.slice(0, 1)] : dealt;
}

/**
 * @template Card
 * @param {Card[]} cards
 * @param {() => number} chance
 */
function shuffled(cards, chance) {
  const left = [...cards];
  return cards.flatMap(() => left.splice(Math.floor(chance() * left.length), 1));
}
