"""A number with the unit that is said behind it, held against one of the lesson's."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Self

from generator.check.claims.claim import within
from generator.check.spoken_numbers.meant import Beside
from generator.compute.figure import Figure
from generator.compute.rounding import to_step
from generator.language import Language
from generator.language.form import Leeway
from generator.language.number import Number
from generator.model.figure import FigureKind, Tally
from generator.model.measure import Measure, Unit

_IN_MILLIGRAMS = {Unit.GRAM: 1000, Unit.MILLIGRAM: 1}
_QUARTER = Decimal("0.25")
"""Pages show teaspoons to the nearest quarter."""


@dataclass(frozen=True, slots=True)
class Amount:
    """A number as it is said, and in what."""

    number: Number
    """As it stands in the text."""
    unit: Unit | None
    """The unit of measures behind it, if any."""
    group: int
    """What it counts: 10 for *32 tens*, 0 where it counts nothing of the kind."""
    spoons: bool
    """Whether it is said in teaspoons."""
    leeway: Leeway
    """How exactly it is meant."""
    behind: str
    """The words of its unit."""

    @classmethod
    def of(cls, number: Number, near: Beside, language: Language) -> Self:
        """A number with what stands beside it."""
        known = language.said_of
        tail = f" {number.unit}" if number.unit else near.tail
        units = ((unit, found.match(tail)) for unit, found in known.units.items())
        unit, behind = next(((unit, found[0]) for unit, found in units if found), (None, ""))
        group = next((size for size, found in known.groups.items() if found.match(near.tail)), 0)
        spoons = known.teaspoons.match(tail)
        leeway = language.claims.leeway(" ".join(near.head.split()[-3:]))
        return cls(number, unit, group, bool(spoons), leeway, spoons[0] if spoons else behind)

    @property
    def value(self) -> Decimal:
        """As it is said."""
        return self.number.value

    @property
    def quoted(self) -> str:
        """In quotes; a number in words with its digits."""
        words = f"“{' '.join(self.number.text.split())}”"
        return f"{words} ({self.value:,})" if self.number.in_words else words

    @property
    def quoted_whole(self) -> str:
        """In quotes, with its unit."""
        return (
            f"“{' '.join((self.number.text + ('' if self.number.unit else self.behind)).split())}”"
        )

    def agrees(self, figure: Figure) -> bool:
        """Whether it is a number of the lesson."""
        if isinstance(figure.unit, Tally):
            return self.unit is None and self._same(figure.value)
        if figure.kind is FigureKind.COUNT:
            return self._same(figure.value)
        return self.is_value(figure.value, figure.unit, figure.measure)

    def is_value(self, value: Decimal, unit: Unit, measure: Measure) -> bool:
        """Whether it is a value in a unit, said in any unit of the same kind.

        Args:
            value: of the lesson, in ``unit``.
            unit: of ``value``.
            measure: of what.
        """
        if self.group:
            return self._groups(value)
        in_one = measure.entry.grams_per_teaspoon
        if self.spoons and in_one and unit is measure.unit:
            spoons = to_step(Fraction(value) / in_one, _QUARTER)
            return self._same(spoons) or self._same(value / in_one)
        if self.unit and self.unit is not unit:
            said, true = _IN_MILLIGRAMS.get(self.unit), _IN_MILLIGRAMS.get(unit)
            return bool(said and true) and self._same(value * (true or 1) / (said or 1))
        return self._same(value)

    def _groups(self, value: Decimal) -> bool:
        """*32 tens* of 320, and its two tens."""
        many = int(value) // self.group
        return self.value in {many, many % 10} or self._same(value)

    def _same(self, true: Decimal) -> bool:
        return self.value == true or (
            self.leeway is not Leeway.PLAIN
            and within(self.leeway, Fraction(self.value), Fraction(true))
        )
