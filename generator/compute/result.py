"""What the arithmetic found for one lesson: every number a page may show."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from generator.compute.count import Count
from generator.compute.day import DayBalance
from generator.compute.energy_needs import EnergyNeed
from generator.compute.gap import Gap
from generator.compute.label import Shown
from generator.compute.reference_bodies import Body
from generator.model.food import Food, Serving
from generator.model.lesson import Lesson
from generator.model.move import Move
from generator.model.stops.compare import CompareStop, Item
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop
from generator.model.wording import Wording


@dataclass(frozen=True, slots=True)
class Holding:
    """What one side of a row holds."""

    item: Item
    """As the lesson names it."""
    food: Food | None
    """The record, or nothing for a value of its own."""
    serving: Serving | None
    """The amount weighed, or nothing for a value of its own."""
    per_100g: Fraction | None
    """The record's value for 100 g, in the measure's unit."""
    shown: Shown

    def name(self, language: str) -> Wording[str]:
        """What the food is called in a language: the lesson's own wording, else the library's name.

        A lesson's wording is in the lesson's language; ``in_language`` has put another in its place.
        """
        if self.item.name:
            return Wording(self.item.name, foreign=False)
        return self.food.name(language) if self.food else Wording("", foreign=False)


@dataclass(frozen=True, slots=True)
class Row:
    """Two holdings and their gap."""

    id: str
    """Its name in the comparison, given by the educator or made of its foods."""
    sides: tuple[Holding, Holding]
    gap: Gap
    count: Count | None
    """The gap in moves, where a move stop counts it."""


@dataclass(frozen=True, slots=True)
class Comparison:
    """A compare stop worked out."""

    stop: CompareStop
    rows: tuple[Row, ...]
    total: Gap
    per: Count | None
    """The total gap in counts, where a move stop counts this comparison."""


@dataclass(frozen=True, slots=True)
class MoveCount:
    """One move, with the row whose gap it counts."""

    move_id: str
    move: Move
    row: Row
    count: Count


@dataclass(frozen=True, slots=True)
class Movement:
    """A move stop worked out."""

    stop: MoveStop
    comparison: Comparison
    counts: tuple[MoveCount, ...]


@dataclass(frozen=True, slots=True)
class Day:
    """A day stop worked out."""

    stop: DayStop
    eaten: tuple[Holding, ...]
    """Foods with their energy, in the order of the day."""
    body: Body
    """A reference adult's height and weight; for the trace only, never shown to a learner."""
    need: EnergyNeed
    balance: DayBalance


@dataclass(frozen=True, slots=True)
class LessonResult:
    """A lesson with all its numbers."""

    lesson: Lesson
    comparisons: Mapping[str, Comparison] = field(repr=False)
    """By id of the compare stop."""
    movements: Mapping[str, Movement] = field(repr=False)
    """By id of the move stop."""
    days: Mapping[str, Day] = field(repr=False)
    """By id of the day stop."""
