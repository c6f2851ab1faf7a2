"""One measured figure beside its goal."""

from __future__ import annotations

from dataclasses import asdict, dataclass

from bench.goals import GOALS, AtLeast, AtMost


class NothingMeasuredError(Exception):
    """A bench that found nothing to measure must not pass for one that found all well."""


@dataclass(frozen=True, slots=True)
class Case:
    """How much is measured."""

    lessons: int = 1000
    runs: int = 3
    """How often each figure is taken; the median is told."""
    small: bool = False
    """Whether this only shows that the benches work: a few of everything."""


@dataclass(frozen=True, slots=True)
class Row:
    """A figure that was measured."""

    name: str
    figure: float
    unit: str
    goal: float | None
    """Nothing where the figure is only told."""
    ok: bool

    def as_json(self) -> dict[str, object]:
        """As ``--json`` prints it."""
        return asdict(self)

    def __str__(self) -> str:
        goal = "" if self.goal is None else f"{self.goal:>12,.6g}"
        missed = "" if self.ok else "   missed"
        return f"{self.name:<64}{self.figure:>14,.5g} {self.unit:<12}{goal}{missed}"


def row(key: str, figure: float, of: str = "") -> Row:
    """A figure held to the goal of its key.

    Args:
        key: in ``GOALS``.
        figure: what was measured, in the goal's unit.
        of: which of several things the goal is asked of, such as a page.
    """
    goal = GOALS[key]
    name = f"{goal.name}, {of}" if of else goal.name
    match goal:
        case AtMost():
            return Row(name, figure, goal.unit, goal.bound, figure <= goal.bound)
        case AtLeast():
            return Row(name, figure, goal.unit, goal.bound, figure >= goal.bound)


def told(name: str, figure: float, unit: str) -> Row:
    """A figure without a goal."""
    return Row(name, figure, unit, None, ok=True)
