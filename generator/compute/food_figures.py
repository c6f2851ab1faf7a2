"""Whether the figures of 100 g of a food can be true together: each alone, parts and whole, energy and its parts."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from generator.compute.plausible import TOLERANCE, atwater_sum
from generator.model.food_record import PARTS
from generator.model.measure import Measure

GRAMS = Decimal(1)
"""Grams in 100 g by which parts may exceed their whole: records round, and measure sugars apart from
carbohydrate, which is what the rest leaves. Of SR Legacy none is further off than 0.93 g."""
KCAL = Decimal(5)
"""The smallest step of a label's energy; below it no difference says anything."""
_SHARE = Decimal(TOLERANCE.numerator) / TOLERANCE.denominator
_ALCOHOL = Decimal(7)
"""kcal/g; NCBI Bookshelf NBK83822, glossary."""
_FIBER_LEAST = Decimal("1.5")
"""kcal/g of fiber that is little digested (1.5 to 2.5, same place); 4-4-9 counts it as 4."""
_FAT = 9
_WHOLE = {"sugars": "carbohydrate", "fiber": "carbohydrate", "saturated_fat": "fat"}
_MOST = {
    measure.value: Decimal(100 * most.numerator) / most.denominator
    for measure in Measure
    if (most := measure.entry.most.in_one_gram)
} | {part: Decimal(100) for part in PARTS}


class DoubtKind(StrEnum):
    """What is doubtful about a figure."""

    TOO_MUCH = "too much"
    """More than any food holds."""
    PARTS = "parts"
    """A part that is more than its whole."""
    TOGETHER = "together"
    """Protein, fat and carbohydrate weigh more than the food."""
    BELOW_FAT = "below fat"
    """Less energy than its fat alone gives."""
    BEYOND_ALL = "beyond all"
    """More energy than its parts give, were all the rest of it alcohol."""
    LOW = "low"
    """Less energy than its parts give; polyols or fiber may be why."""
    HIGH = "high"
    """More energy than its parts give; alcohol may be why."""


_MAY_BE = frozenset({DoubtKind.LOW, DoubtKind.HIGH})


@dataclass(frozen=True, slots=True)
class Doubt:
    """A figure that cannot be, or that is worth a look."""

    kind: DoubtKind
    figure: str
    """Its name in an entry of the library, such as ``energy``."""
    value: Decimal
    """As it is given, in its own unit; the sum where it is of several together."""
    limit: Decimal
    """What it is held against, in the same unit: the most or least there can be, or the 4-4-9 sum."""

    @property
    def can_be(self) -> bool:
        """Whether there is a food of which this is true."""
        return self.kind in _MAY_BE

    @property
    def whole(self) -> str:
        """Of a part: the figure that it is a part of."""
        return _WHOLE.get(self.figure, "")


def label_rounding(serving: Decimal) -> Decimal:
    """How many times coarser than a record's the figures of a label are, for a serving in grams.

    A label rounds each figure of a serving to a gram or 10 kcal, 21 CFR 101.9(c); of three figures
    together half of that three times.
    """
    return max(Decimal(1), 150 / serving)


def doubts(held: Mapping[str, Decimal | None], rounding: Decimal = Decimal(1)) -> Iterator[Doubt]:
    """What is doubtful about 100 g of a food; a blank is no zero, and nothing is held against it.

    Args:
        held: figures by the names of ``FIGURES``, in their own units.
        rounding: how many times coarser than a record's they are rounded, see ``label_rounding``.
    """
    grams, kcal = GRAMS * rounding, KCAL * rounding
    off = {"energy": kcal} if rounding > 1 else {}
    too_much = [
        Doubt(DoubtKind.TOO_MUCH, name, value, _MOST[name])
        for name, value in held.items()
        if value is not None and value > _MOST[name] + off.get(name, 0)
    ]
    yield from too_much
    wrong = {doubt.figure for doubt in too_much}
    for part, whole in _WHOLE.items():
        of, all_of_it = held.get(part), held.get(whole)
        if of is None or all_of_it is None or {part, whole} & wrong:
            continue
        if of > all_of_it + grams:
            yield Doubt(DoubtKind.PARTS, part, of, all_of_it)
    protein, fat, carbohydrate = held.get("protein"), held.get("fat"), held.get("carbohydrate")
    if protein is None or fat is None or carbohydrate is None or wrong & {"protein", *PARTS}:
        return
    carbohydrate = max(carbohydrate, Decimal(0))  # by difference it may come out a little below
    weight = protein + fat + carbohydrate
    if weight > 100 + grams:
        yield Doubt(DoubtKind.TOGETHER, "protein", weight, Decimal(100))
    energy = held.get("energy")
    if energy is not None and "energy" not in wrong:
        fiber = held.get("fiber") or Decimal(0)
        rest = max(Decimal(0), 100 - weight)
        parts = atwater_sum(protein, carbohydrate, fat)
        yield from _of_energy(energy, _Parts(parts, fat, fiber, rest), kcal)


@dataclass(frozen=True, slots=True)
class _Parts:
    """What energy is held against: the 4-4-9 sum in kcal, the others in grams."""

    sum: Decimal
    fat: Decimal
    fiber: Decimal
    rest: Decimal


def _of_energy(energy: Decimal, parts: _Parts, kcal: Decimal) -> Iterator[Doubt]:
    """Energy in kcal against its parts; ``kcal`` is a difference that says nothing."""
    of_fat = _FAT * parts.fat
    most = parts.sum * (1 + _SHARE) + kcal
    least = (parts.sum - (4 - _FIBER_LEAST) * parts.fiber) * (1 - _SHARE) - kcal
    if energy < of_fat * (1 - _SHARE) - kcal:
        yield Doubt(DoubtKind.BELOW_FAT, "energy", energy, of_fat)
    elif energy > most + _ALCOHOL * parts.rest:
        yield Doubt(DoubtKind.BEYOND_ALL, "energy", energy, parts.sum)
    elif energy > most:
        yield Doubt(DoubtKind.HIGH, "energy", energy, parts.sum)
    elif energy < least:
        yield Doubt(DoubtKind.LOW, "energy", energy, parts.sum)
