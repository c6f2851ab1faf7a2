"""The two numbers of a claim that names foods: one food, several together, two portions of one."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.check.claims.claim import Claim
from generator.check.claims.mentions import Mention, Seat, held_at
from generator.check.claims.pair import Pair
from generator.compute.result import Comparison
from generator.language.form import Form
from generator.language.grammar import Grammar


@dataclass(frozen=True, slots=True)
class Named:
    """A claim with the foods that are named beside it."""

    claim: Claim
    """What is said of them."""
    foods: tuple[Mention, ...]
    """In the order of the sentence; at least one."""
    sentence: str
    """All of it, as it is written."""
    comparison: Comparison
    """Where the foods stand."""
    grammar: Grammar
    """Of the sentence's language."""

    def pairs(self) -> tuple[Pair, ...]:
        """Pairs of two foods named, or of one food and the one beside it."""
        start = self.claim.start
        before = [food for food in self.foods if food.start < start]
        after = [food for food in self.foods if food.start >= start]
        if before and after and self._differ(before[-1], after[0]):
            ones = self._of(before, before[-1], self.sentence[:start])
            others = self._of(after, after[0], self.sentence[self.claim.end :])
            return self._all_pairs(ones, others, directed=True)
        first = self.foods[0]
        other = next((food for food in self.foods if self._differ(first, food)), None)
        if other and not (before and after):
            ones, others = self._values(first), self._values(other)
            return self._all_pairs(ones, others, directed=not before)
        return self._beside(first, after=not before)

    def _differ(self, one: Mention, other: Mention) -> bool:
        return one.seats != other.seats or self._times(one) != self._times(other)

    def _of(self, group: list[Mention], nearest: Mention, stretch: str) -> tuple[Decimal, ...]:
        """What the food nearest to the claim holds; or all of its group together."""
        if len(group) < 2 or not self.grammar.together.search(stretch):
            return self._values(nearest)
        single = [self._values(food)[0] for food in group if len(food.seats) == 1]
        return (sum(single, Decimal(0)),)

    def _times(self, food: Mention) -> Fraction:
        """How many portions of it: *two apples*; a word of several foods is counted as it is."""
        found = self.grammar.counted.search(self.sentence[: food.start])
        number = self.grammar.number(found["n"]) if found and len(food.seats) == 1 else None
        return number or Fraction(1)

    def _values(self, food: Mention) -> tuple[Decimal, ...]:
        times = self._times(food)
        by = Decimal(times.numerator) / Decimal(times.denominator)
        return tuple(by * value_at(self.comparison, seat) for seat in sorted(food.seats))

    def _all_pairs(
        self, ones: tuple[Decimal, ...], others: tuple[Decimal, ...], *, directed: bool
    ) -> tuple[Pair, ...]:
        every = _all(self.comparison)
        counted = any(self._times(food) != 1 for food in self.foods)
        return tuple(
            Pair(one, other, directed, every, counted=counted) for one in ones for other in others
        )

    def _beside(self, food: Mention, *, after: bool) -> tuple[Pair, ...]:
        """One food, and the one beside it in its row."""
        one_side = len({side for _, side in food.seats}) == 1
        pairs = tuple(
            Pair(
                value_at(self.comparison, (row, side)),
                value_at(self.comparison, (row, 1 - side)),
                one_side,  # a word of both foods of a row tells no direction
                _all(self.comparison),
            )
            for row, side in sorted(food.seats)
        )
        meant = not after or self.claim.form in {Form.MOST, Form.LEAST}  # wherever it stands
        return pairs if meant else tuple(pair.turned for pair in pairs)


def value_at(comparison: Comparison, seat: Seat) -> Decimal:
    """What the food at a seat holds, as shown."""
    return held_at(comparison, seat).shown.value


def _all(comparison: Comparison) -> tuple[Decimal, ...]:
    return tuple(held.shown.value for held in comparison.holdings)
