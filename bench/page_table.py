"""Prints how long, heavy and quick the pages are beside what a review found before, as a Markdown table.

Run `python bench/page_table.py`; it takes some minutes. The exit code is 1 where a goal is missed or
nothing was measured.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from bench.goals import GOALS
from bench.measuring.row import Case, NothingMeasuredError, Row  # run as a file
from bench.run import measured


@dataclass(frozen=True, slots=True)
class Line:
    """One thing that was found too long, too heavy, too slow or wrong."""

    goal: str
    """Its key in ``GOALS``."""
    before: str
    """What the review found, in the words of its table."""
    summed: bool = False
    """Whether rows are added up; otherwise the worst is told."""


BENCHES = ("lengths", "kept", "engines", "first_view", "inp")
LINES = (
    Line("compare_screens", "3.0 screens"),
    Line("move_screens", "2.9 screens"),
    Line("kept", "1,700 kB"),
    Line("flows", "9 in three engines", summed=True),
    Line("first_view", "no figure"),
    Line("inp", "272 ms"),
)
HEAD = "| what | before | now | at most |\n| --- | --- | --- | --- |"


def main() -> int:
    """Measure and print."""
    try:
        rows = list(measured(list(BENCHES), Case()))
    except NothingMeasuredError as error:
        print(f"nothing was measured: {error}", file=sys.stderr)
        return 1
    print("\n".join([HEAD, *table(rows)]))
    return int(not all(one.ok for one in rows))


def table(rows: Iterable[Row]) -> Iterator[str]:
    """One line of Markdown for each thing.

    Raises:
        NothingMeasuredError: one of them has no figure.
    """
    known = list(rows)
    for line in LINES:
        goal = GOALS[line.goal]
        of = [one for one in known if one.name.startswith(goal.name)]
        if not of:
            raise NothingMeasuredError(goal.name)
        worst = max(of, key=lambda one: one.figure)
        now = sum(one.figure for one in of) if line.summed else worst.figure
        where = [one.name.removeprefix(goal.name).removeprefix(", ") for one in of]
        at = "; ".join(where) if line.summed else where[of.index(worst)]
        yield f"| {goal.name} | {line.before} | {now:,.4g} {goal.unit} ({at}) | {goal.bound:,} |"


if __name__ == "__main__":
    sys.exit(main())
