"""What the changes of a what-if stop come to: both sides with another food, and the gap between them."""

from __future__ import annotations

from dataclasses import dataclass

from generator.compute.gap import Gap
from generator.compute.holding import Holding
from generator.compute.result import Compared, Comparison, Row, WorkedStop
from generator.model.measure import Measure
from generator.model.stops.what_if import WhatIfStop


@dataclass(frozen=True, slots=True)
class Changed:
    """One change of a what-if stop worked out."""

    id: str
    """Its name in the ledger, given by the educator or made of its foods."""
    row: int
    """Which row of the comparison holds the changed food, from 0."""
    side: int
    """On which side, 0 or 1."""
    new: tuple[Holding, ...]
    """What stands there instead; nothing where the food is left out."""
    gap: Gap
    """Of that row, with the change."""
    total: Gap
    """Of all rows, with the change; this is the gap that is asked for."""


@dataclass(frozen=True, slots=True)
class WhatIf(WorkedStop):
    """A what-if stop worked out: each change for itself."""

    stop: WhatIfStop
    """As the lesson has it."""
    comparison: Comparison
    """What is changed."""
    changes: tuple[Changed, ...]
    """In the order of the lesson."""

    @property
    def measure(self) -> Measure:
        """What is compared."""
        return self.comparison.stop.measure

    @property
    def comparison_told(self) -> Comparison:
        """The one that is changed."""
        return self.comparison

    @property
    def compared(self) -> Compared:
        """Both sides before and after, each row, and the old food beside the new."""
        gaps = [row.gap for row in self.comparison.rows]
        gaps += [
            self.comparison.total,
            *(gap for one in self.changes for gap in (one.gap, one.total)),
        ]
        sides = tuple((gap.first, gap.second) for gap in gaps)
        was = self.comparison.total
        totals = tuple((was.size, one.total.size) for one in self.changes)
        foods = tuple(
            (self.old(one).shown.value, held.shown.value)
            for one in self.changes
            for held in one.new
        )
        return Compared(self.measure, (*sides, *totals, *foods))

    def row_of(self, change: Changed) -> Row:
        """The row that holds the changed food, as it was."""
        return self.comparison.rows[change.row]

    def old(self, change: Changed) -> Holding:
        """The food that is changed."""
        return self.row_of(change).sides[change.side]

    def foods_after(self, change: Changed, *sides: int) -> tuple[Holding, ...]:
        """What some sides hold with a change, row by row."""
        return tuple(
            held
            for number, row in enumerate(self.comparison.rows)
            for side in sides
            for held in (
                change.new if (number, side) == (change.row, change.side) else (row.sides[side],)
            )
        )
