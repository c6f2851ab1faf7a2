"""The stops of a lesson, each kind with what it shows."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.present.views.amounts import SourceView
from generator.present.views.comparison import ChartView, RowView, TotalView
from generator.present.views.number import Number
from generator.present.views.stop import Head


@dataclass(frozen=True, slots=True)
class WatchView:
    """A stretch of the video."""

    head: Head
    until: str
    """``0:40``"""
    says: str
    """``Watch from 0:00 to 0:40.``"""


@dataclass(frozen=True, slots=True)
class AskView:
    """A question with hint and reveal."""

    head: Head
    prompt: Markup
    hint: Markup
    """Empty where there is none."""
    reveal: Markup


@dataclass(frozen=True, slots=True)
class CompareView:
    """A gap calculator."""

    head: Head
    prompt: Markup
    measure: str
    """``energy``, in the page's language."""
    unit: str
    about: str
    """What the measure is, in one sentence for a child."""
    sides: tuple[str, str]
    rows: tuple[RowView, ...]
    total: TotalView | None
    """Where the total is asked for or there is more than one row."""
    ask_total: bool
    reveal: Markup
    chart: ChartView
    sources: tuple[SourceView, ...]


@dataclass(frozen=True, slots=True)
class MoveCardView:
    """A move with its count."""

    id: str
    """Id in the moves library."""
    name: str
    count: Number
    """Whole counts."""
    left_over: str
    count_is: str
    """``One count is one knee up.``"""
    steps: tuple[str, ...]
    seated: str
    care: str
    room: str
    noise: str
    pace: int
    """Counts a minute."""
    figures: tuple[Markup, ...]
    """Line figures of the move."""
    seated_figures: tuple[Markup, ...]
    pictures: tuple[str, ...]
    """Addresses of the figures as files, for pages that should stay small."""
    seated_pictures: tuple[str, ...]
    for_row: str
    """``Apple and Apple pie: 320 ÷ 10``"""
    row: str
    """``Apple and Apple pie``"""
    division: str
    """``320 kcal ÷ 10``"""
    asked_in: str
    """Address of the row whose gap or count the learner works out; empty where that is not asked."""


@dataclass(frozen=True, slots=True)
class MoveView:
    """The moves of a comparison."""

    head: Head
    prompt: Markup
    rule: str
    """``One move for every 10 kcal of the gap.``"""
    cards: tuple[MoveCardView, ...]
    before: tuple[str, ...]
    """Room check and stop signs, before anyone moves."""


@dataclass(frozen=True, slots=True)
class EatenView:
    """A food of a day."""

    when: str
    """The meal, or empty where it is the same as above."""
    name: str
    amount: str
    value: str
    """Energy with its unit."""


@dataclass(frozen=True, slots=True)
class DayView:
    """An invented person's day, to decide about and then check."""

    head: Head
    prompt: Markup
    person: str
    """Who it is, in a sentence."""
    ate: tuple[EatenView, ...]
    did: tuple[str, ...]
    choices: tuple[tuple[str, str], ...]
    """Value and wording of each way the day may lean."""
    lean: str
    """The value of the way it does lean."""
    answer: str
    """Which way, in a sentence."""
    eaten: str
    needed: str
    """Energy with unit."""
    sum: str
    """``170 + 90 = 260``, in shown numbers."""
    tilt: str
    """Degrees clockwise of the beam; negative where the eaten side, on the left, is lower."""
    beam: str
    """What the picture shows, in a sentence."""
    band: str
    """How wide ``about even`` is, in a sentence."""
    reveal: Markup
    sources: tuple[SourceView, ...]
    """For the teaching notes: a day has many foods, and its page links there."""
    sources_at: str
    """Address of that part of the notes."""


@dataclass(frozen=True, slots=True)
class TalkView:
    """Something to talk over."""

    head: Head
    prompt: Markup
    ideas: tuple[Markup, ...]
