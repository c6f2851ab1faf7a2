"""What a portion brings: the one or two things it holds much of, by its shares of the Daily Values."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

from generator.compute.label import Shown, by_rule
from generator.model.food import Food, Serving
from generator.model.measure import Measure

A_GOOD_SOURCE = 10
"""Percent of the Daily Value from which a label may say "good source": 21 CFR 101.54(c); "high" is 20.

The rule counts by the reference amount of a kind of food; here it is the portion that is shown.
Protein is counted by its amount. A label would correct it for its quality first (101.9(c)(7)),
which no record here knows.
"""
LITTLE, MUCH = 5, 20
"""Percent of the Daily Value, as a label shows it, up to which it is low and from which it is high:
FDA's guidance to consumers on the food label (its wording is from memory)."""
MOST_TOLD = 2
"""Things that are told of one portion."""
SOUGHT = tuple(measure for measure in Measure if measure.entry.brings)
"""Measures that a portion can bring."""


class Level(StrEnum):
    """What adults are told of a share."""

    LOW = "low"
    """A twentieth of a day's worth or less."""
    HIGH = "high"
    """A fifth of a day's worth or more."""


@dataclass(frozen=True, slots=True)
class Share:
    """How much of one Daily Value a portion holds."""

    measure: Measure
    """What is held; it brings the unit."""
    held: Fraction
    """What the portion holds, in the measure's unit, before any rounding."""
    of: Decimal
    """The Daily Value, for adults and children of 4 years and more, in the same unit."""
    percent: Shown
    """Its share in percent, before rounding and as a label shows it."""

    @property
    def level(self) -> Level | None:
        """Low, high or neither, by the percent that a label shows."""
        if self.percent.value <= LITTLE:
            return Level.LOW
        return Level.HIGH if self.percent.value >= MUCH else None


@dataclass(frozen=True, slots=True)
class Brings:
    """What one portion brings."""

    much: tuple[Share, ...]
    """Those it holds much of, the largest share first; two at most, and none of many a food."""
    little_or_much: tuple[Share, ...]
    """For adults: of saturated fat and sodium, as far as the record has a value."""
    unknown: tuple[Measure, ...]
    """Of what a portion can bring, where the record has no value; that is not zero."""


def what_it_brings(food: Food, serving: Serving) -> Brings:
    """What a portion of a food brings.

    A share counts by what the portion really holds, so that rounding never makes a good source. Two
    equal shares stand in the order of the table of measures. Where the record has no value nothing
    is said; added sugars are told of no food, for no record here knows them apart.

    Source: 21 CFR 101.54(b), (c); 101.9(c)(8)(iii), (c)(9) and (d)(7)(ii).
    """
    much = [
        share for share in _shares(food, serving, SOUGHT) if share.percent.exact >= A_GOOD_SOURCE
    ]
    much.sort(key=lambda share: -share.percent.exact)
    told = tuple(_shares(food, serving, [one for one in Measure if one.entry.little_or_much]))
    unknown = tuple(measure for measure in SOUGHT if food.value(measure) is None)
    return Brings(tuple(much[:MOST_TOLD]), told, unknown)


def _shares(food: Food, serving: Serving, measures: Iterable[Measure]) -> Iterator[Share]:
    for measure in measures:
        per_100g, entry = food.value(measure), measure.entry
        if per_100g is None or entry.daily_value is None or entry.percent is None:
            continue
        held = Fraction(per_100g) * serving.grams / 100
        percent = by_rule(entry.percent, held * 100 / Fraction(entry.daily_value))
        yield Share(measure, held, entry.daily_value, percent)
