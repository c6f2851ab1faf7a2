"""A comparison: its rows, its total and its chart."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.present.views.amounts import (
    BlocksView,
    ColumnView,
    HoldingView,
    RingsView,
    WorkingView,
)
from generator.present.views.number import Number


@dataclass(frozen=True, slots=True)
class CountView:
    """A gap in counts of one move."""

    gap: Number
    """Without its unit, like all that follows from it."""
    whole: Number
    per: Number
    """How much of the gap is one count."""
    left_over: str
    """What the count leaves over, formatted; empty when nothing is."""
    question: str
    """``How many tens?``"""
    hint: str
    """How to find it."""


@dataclass(frozen=True, slots=True)
class RowView:
    """One row of a gap calculator."""

    id: str
    """Address of the row on the page: ``lunch--apple-raw_pear-raw``."""
    number: int
    """Counted from 1."""
    question: str
    """The row's question in words."""
    help: str
    """``none``, ``hops`` or ``worked``: how much of the calculation stands there from the start."""
    hops: Markup
    """The hops without their sizes, where they help; else empty."""
    count_up: str
    """A second way to the gap, in this row's numbers; empty where both sides are the same."""
    hops_added: str
    """``10 + 300 + 10 = 320``; empty where both sides are the same."""
    label: str
    """``Row 1``, for a screen reader; the question says the rest."""
    legend: str
    """``Row 1: Apple and Apple pie``, where it stands alone."""
    first: HoldingView
    second: HoldingView
    gap: Number
    """With its unit."""
    holder: str
    """Name of the side that holds more; empty where both hold the same."""
    left: BlocksView
    """What is left of the larger when both are matched."""
    left_hundred: str
    """How its hundreds are drawn: ``tens`` where they are taken apart to be counted, else ``hundred``."""
    rings: RingsView | None
    """The same in groups, where a count is made of more than one block."""
    left_key: str
    """``first`` or ``second``: whose blocks are left."""
    line: Markup
    """Number line from the smaller to the larger number; empty where both are the same."""
    ask_gap: bool
    count: CountView | None
    """The gap in counts, where that is asked."""
    hint: str
    working: WorkingView
    columns: tuple[ColumnView, ...]
    """The subtraction digit under digit, for paper."""


@dataclass(frozen=True, slots=True)
class HangingView:
    """The gaps of a comparison, hung one by one as they are found."""

    knots: range
    """One for each."""
    drops: str
    """``48.5first 0``: of each, how long its thread is, and whose side its leaf points to."""
    size: str
    """Of the plums; empty for whole ones."""


@dataclass(frozen=True, slots=True)
class TotalView:
    """The totals of a comparison."""

    id: str
    """Address on the page: ``lunch--total``."""
    first: Number
    second: Number
    gap: Number
    """Each with its unit."""
    working: WorkingView


@dataclass(frozen=True, slots=True)
class BarView:
    """One bar of the chart in the page."""

    label: str
    """The food."""
    side_key: str
    value: str
    """Formatted, with its unit."""
    width: str
    """Percent of the longest bar, 0 to 100."""


@dataclass(frozen=True, slots=True)
class ChartView:
    """The two sides as bars, and where the figure to explore is kept."""

    label: str
    """What the picture shows, in a sentence."""
    bars: tuple[BarView, ...]
    figure: str
    """Path of the interactive figure's data."""
    library: str
    """Address of the script that draws it, relative to the page."""
