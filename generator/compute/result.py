"""What the arithmetic found for one lesson: each stop worked out, and the ledger of all numbers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from itertools import combinations
from typing import TypeVar

from generator.compute.count import Count
from generator.compute.day import DayBalance
from generator.compute.energy_needs import EnergyNeed
from generator.compute.figure import Figure
from generator.compute.gap import Gap
from generator.compute.holding import Holding
from generator.compute.move_minutes import MoveMinutes
from generator.compute.reference_bodies import Body
from generator.model.figure import FigureKind, Tally
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.model.measure import Measure, Unit
from generator.model.move import Move
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop


@dataclass(frozen=True, slots=True)
class Compared:
    """Shown numbers of one stop that its texts may hold against each other."""

    measure: Measure
    """Of all of them."""
    pairs: tuple[tuple[Decimal, Decimal], ...]
    """Two and two."""


class WorkedStop:
    """A stop worked out; each kind of stop with numbers of its own has a class of its own."""

    __slots__ = ()

    @property
    def comparison_told(self) -> Comparison | None:
        """The comparison that its texts speak of."""
        return None

    @property
    def compared(self) -> Compared | None:
        """What its own texts may hold against each other, where they speak of no comparison."""
        return None


@dataclass(frozen=True, slots=True)
class Row:
    """Two holdings and their gap."""

    id: str
    """Its name in the comparison, given by the educator or made of its foods."""
    sides: tuple[Holding, Holding]
    """What each side holds, in the order of the sides."""
    gap: Gap
    """Between the two shown values."""


@dataclass(frozen=True, slots=True)
class Counts:
    """The gaps of a comparison in moves, all in the same step."""

    per: Decimal
    """How much of a gap stands for one count, in the measure's unit."""
    rows: tuple[Count, ...]
    """Of each row."""
    total: Count
    """Of all rows together."""


@dataclass(frozen=True, slots=True)
class Comparison(WorkedStop):
    """A compare stop worked out."""

    stop: CompareStop
    """As the lesson has it."""
    rows: tuple[Row, ...]
    """In the order of the lesson."""
    total: Gap
    """Of all shown values of one side and the other."""
    counts: Counts | None
    """Where a move stop counts its gaps."""
    side_ids: tuple[str, str]
    """The names of its sides in the ledger."""

    @property
    def comparison_told(self) -> Comparison:
        """Itself."""
        return self

    @property
    def holdings(self) -> tuple[Holding, ...]:
        """The foods of its rows, those of a row beside each other."""
        return tuple(held for row in self.rows for held in row.sides)


@dataclass(frozen=True, slots=True)
class CountedMove:
    """One move, with the row whose gap it counts."""

    move_id: str
    """As in ``site_data/moves.yaml``."""
    move: Move
    """The entry there."""
    number: int
    """Of the row, from 1."""
    row: Row
    """Whose gap is counted."""
    count: Count
    """The row's own, as the comparison has it."""
    minutes: MoveMinutes | None
    """For the teaching notes: of a gap in energy, where a value for children was published."""


@dataclass(frozen=True, slots=True)
class Movement(WorkedStop):
    """A move stop worked out."""

    stop: MoveStop
    """As the lesson has it."""
    comparison: Comparison
    """Whose gaps are counted."""
    counts: tuple[CountedMove, ...]
    """One for each row that does not rest, in the order of the rows."""

    @property
    def moved(self) -> tuple[CountedMove, ...]:
        """Those that are done at all; a gap may be too small for a count."""
        return tuple(one for one in self.counts if one.count.whole)

    @property
    def still(self) -> tuple[int, ...]:
        """Numbers of the rows that leave nothing to move."""
        moved = {one.number for one in self.moved}
        return tuple(one for one in range(1, len(self.comparison.rows) + 1) if one not in moved)

    @property
    def comparison_told(self) -> Comparison:
        """The one whose gaps it counts."""
        return self.comparison


@dataclass(frozen=True, slots=True)
class Day(WorkedStop):
    """A day stop worked out."""

    stop: DayStop
    """As the lesson has it."""
    eaten: tuple[Holding, ...]
    """Foods with their energy, in the order of the day."""
    food_ids: tuple[str, ...]
    """Their names in the ledger."""
    body: Body
    """A reference adult's height and weight; for the trace only, never shown to a learner."""
    need: EnergyNeed
    """What the day took, before it is rounded for showing."""
    balance: DayBalance
    """Both sums as shown, and which way they lean."""

    @property
    def compared(self) -> Compared:
        """What was eaten and what was needed, and any two of the foods."""
        foods = combinations((held.shown.value for held in self.eaten), 2)
        return Compared(Measure.ENERGY, ((self.balance.eaten, self.balance.needed), *foods))


@dataclass(frozen=True, slots=True)
class NoAnswer:
    """A question whose answer cannot be computed; ``check`` tells why."""

    key: str
    """In the lesson file, below the question."""
    what: str
    """What is wrong."""
    hint: str
    """The way out."""


@dataclass(frozen=True, slots=True)
class NumberAnswer:
    """A number that answers a question."""

    value: Decimal
    """Whole, and never below zero."""
    measure: Measure
    """Of the numbers it is made from."""
    unit: Unit | Tally | None
    """Nothing for one number as a multiple of another."""
    parts: tuple[Fraction | str, ...]
    """The sum, with its numbers and signs."""
    names: tuple[str, ...]
    """Of the numbers of the lesson in it."""


@dataclass(frozen=True, slots=True)
class ChosenAnswer(NumberAnswer):
    """A food or a side that answers a question; ``value`` is what it holds, ``parts`` what each holds."""

    comparison: str
    """Id of the compare stop."""
    options: tuple[Holding | int, ...]
    """All foods, or both sides by their numbers from 0."""
    right: int
    """Which of the options it is, from 0."""


Answer = NoAnswer | NumberAnswer
"""What a question whose answer is computed comes to."""


W = TypeVar("W", bound=WorkedStop)


@dataclass(frozen=True, slots=True, eq=False)  # one lesson worked out twice is two
class LessonResult:
    """A lesson with all its numbers."""

    lesson: Lesson
    """As it was read, in one of its languages."""
    worked: Mapping[str, WorkedStop] = field(repr=False)
    """What each stop with numbers of its own came to, by its id."""
    figures: tuple[Figure, ...] = field(repr=False)
    """The ledger: every number of the lesson once, in the order of its stops, answers last."""
    library: Library = field(repr=False)
    """What it was worked out with. A lesson that looks through all foods is made anew with each of them."""
    answers: Mapping[str, Answer] = field(default_factory=dict, repr=False)
    """What computed answers come to, by the stop that asks; ``parting`` for the parting question."""

    def of(self, kind: type[W]) -> Mapping[str, W]:
        """What the stops of one kind came to, by their ids, in the order of the lesson."""
        return {name: one for name, one in self.worked.items() if isinstance(one, kind)}

    @property
    def comparisons(self) -> Mapping[str, Comparison]:
        """By id of the compare stop."""
        return self.of(Comparison)

    @property
    def movements(self) -> Mapping[str, Movement]:
        """By id of the move stop."""
        return self.of(Movement)

    @property
    def days(self) -> Mapping[str, Day]:
        """By id of the day stop."""
        return self.of(Day)

    @property
    def moved(self) -> tuple[CountedMove, ...]:
        """Every move that is done, of all move stops in the order of the lesson."""
        return tuple(one for movement in self.movements.values() for one in movement.moved)

    @property
    def holdings(self) -> tuple[Holding, ...]:
        """Every food that the lesson shows, as often as it does, in its order."""
        held = (figure.foods for figure in self.figures if figure.kind is FigureKind.HOLDS)
        return tuple(food for foods in held for food in foods)

    def of_stop(self, stop: str) -> tuple[Figure, ...]:
        """The numbers that belong to a stop, by its id."""
        return tuple(figure for figure in self.figures if figure.stop == stop)

    def ids_of(self, stop: str, row: str, *kinds: FigureKind) -> tuple[str, ...]:
        """Names of the numbers of some kinds that belong to a row of a stop."""
        return tuple(
            figure.id for figure in self.of_stop(stop) if figure.row == row and figure.kind in kinds
        )
