"""What an educator wishes of a row, each wish apart, so that one can be given up."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from decimal import Decimal
from enum import StrEnum
from typing import assert_never

from generator.compute.count import Count
from generator.compute.school_arithmetic import dividing, subtracting
from generator.compute.trading import Trading
from generator.model.food import Allergen, Food
from generator.model.grades import Grades
from generator.model.measure import Measure


class Wish(StrEnum):
    """What can be given up; the option it is asked by."""

    GAP = "gap"
    GRADES = "grades"
    TRADING = "trading"
    PER = "per"
    LEFT = "left"
    GROUPS = "groups"
    WITHOUT = "without"
    WITH = "with"


@dataclass(frozen=True, slots=True)
class PairWishes:
    """What a row has to have; nothing where it is all the same."""

    measure: Measure
    """What is compared."""
    gap: tuple[Decimal, Decimal] | None = None
    """The smallest and the largest gap, both meant, in the measure's unit."""
    grades: Grades | None = None
    """Whose arithmetic the rows ask for: nothing they have not met, nothing far below them."""
    trading: Trading | None = None
    """What the subtraction asks for."""
    per: Decimal | None = None
    """How much of the gap is one count, in the measure's unit."""
    most_counts: int | None = None
    """No row is counted more often: the largest cap of any move for the grades."""
    left: Decimal | None = None
    """What is left over when the gap is counted; goes with ``per``."""
    groups: frozenset[str] = frozenset()
    """Groups of the library that both foods stand in; any where there is none."""
    without: frozenset[Allergen] = frozenset()
    """Allergens that neither food plainly contains."""
    wanted: str | None = None
    """Id of a food that is one of the two."""

    def suits(self, food: Food, value: Decimal) -> bool:
        """Whether a portion can stand in such a row at all, by its food and what it shows.

        One that shows 0 cannot: there would be nothing to subtract.
        """
        entry = food.entry
        if not value or self.without & {*entry.contains}:
            return False
        return not self.groups or entry.group in self.groups

    def fits_grades(self, larger: Decimal, smaller: Decimal) -> bool:
        """Whether the arithmetic of a row is that of the grades: its gap, and its count if it has one."""
        if self.grades is None:
            return True
        gap = subtracting(larger, smaller)
        count = dividing(larger - smaller, self.per) if self.per else None
        if gap.beyond(self.grades) or gap.far_below(self.grades):
            return False
        return count is None or not count.beyond(self.grades)

    def holds_wanted(self, one: Food, other: Food) -> bool:
        """Whether the food that is wanted is one of two."""
        return self.wanted is None or self.wanted in {one.id, other.id}

    def counts_well(self, count: Count) -> bool:
        """Whether there is something to move, no more than a cap allows, and what is wished left over."""
        most = self.most_counts or count.whole
        return 1 <= count.whole <= most and self.left in {None, count.left_over}

    @property
    def said(self) -> tuple[Wish, ...]:
        """Those that are not all the same."""
        given: dict[Wish, object] = {
            Wish.GAP: self.gap,
            Wish.GRADES: self.grades,
            Wish.TRADING: self.trading,
            Wish.PER: self.per,
            Wish.LEFT: self.left is not None,
            Wish.GROUPS: self.groups,
            Wish.WITHOUT: self.without,
            Wish.WITH: self.wanted,
        }
        return tuple(wish for wish, value in given.items() if value)

    def given_up(self, wish: Wish) -> PairWishes:
        """All but one of them; without a step of counting nothing is left over either."""
        match wish:
            case Wish.GAP:
                return replace(self, gap=None)
            case Wish.GRADES:
                return replace(self, grades=None, most_counts=None)
            case Wish.TRADING:
                return replace(self, trading=None)
            case Wish.PER:
                return replace(self, per=None, left=None)
            case Wish.LEFT:
                return replace(self, left=None)
            case Wish.GROUPS:
                return replace(self, groups=frozenset())
            case Wish.WITHOUT:
                return replace(self, without=frozenset())
            case Wish.WITH:
                return replace(self, wanted=None)
            case _:
                assert_never(wish)


def given_up(wishes: PairWishes, number: int) -> Iterator[tuple[tuple[Wish, ...], PairWishes]]:
    """Each way to give up so many wishes, with what is left of them."""
    if number == 0:
        yield (), wishes
        return
    for first, rest in given_up(wishes, number - 1):
        for wish in wishes.said:
            if not first or wishes.said.index(wish) > wishes.said.index(first[-1]):
                yield (*first, wish), rest.given_up(wish)
