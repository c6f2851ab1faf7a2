"""A day stop: decide which way it leans, then check."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from generator.compute.day import ABOUT_EVEN, Lean
from generator.compute.result import Day
from generator.compute.rounding import to_places
from generator.model.measure import Measure
from generator.model.stops.day import DayStop
from generator.present.recording.slides.slide import Question
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import Paper, StopKind, nothing
from generator.present.views.amounts import SourceView
from generator.present.views.stop import Head
from generator.present.words.amounts import amount_words, food_name, weighed
from generator.present.words.prose import inline, plain
from generator.present.words.say import Say, digits
from generator.present.words.sources import holding_sources

STEEPEST = 14
"""Degrees the beam tilts at most; it stands there when one side is half as much again or more."""


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


def _view(told: StopInLesson[DayStop]) -> DayView:
    stop, say = told.stop, told.say
    day = told.result.days[told.id]
    balance, person = day.balance, stop.person
    numbers = " + ".join(say.number(held.shown.value) for held in day.eaten)
    return DayView(
        head=told.head(),
        prompt=inline(stop.prompt) if stop.prompt else Markup(""),
        person=say(f"day_person_{person.sex}", name=person.name, age=person.age),
        ate=tuple(_eaten(day, say)),
        did=stop.did,
        choices=tuple((lean.value, say(f"day_choice_{lean}", name=person.name)) for lean in Lean),
        lean=balance.lean.value,
        answer=say(
            f"day_answer_{balance.lean}",
            name=person.name,
            gap=say.quantity(balance.gap, Measure.ENERGY),
        ),
        eaten=say.quantity(balance.eaten, Measure.ENERGY),
        needed=say.quantity(balance.needed, Measure.ENERGY),
        sum=f"{numbers} = {say.number(balance.eaten)}",
        tilt=beam_tilt(balance.ratio),
        beam=say(f"day_beam_{balance.lean}"),
        band=say("day_band", percent=say.number(int(ABOUT_EVEN * 100))),
        reveal=inline(stop.reveal) if stop.reveal else Markup(""),
        sources=holding_sources(day.eaten, Measure.ENERGY, say),
        sources_at=f"notes.html#from-{told.id}",
    )


def beam_tilt(ratio: Fraction) -> str:
    """Degrees clockwise of the beam for eaten ÷ needed, to a tenth; the eaten side hangs on the left.

    Level at 1, and never steeper than ``STEEPEST``. The tilt grows with the difference, so that a
    day about even looks about even.
    """
    steepest = Fraction(STEEPEST)
    degrees = max(-steepest, min(steepest, (1 - ratio) * 2 * steepest))
    return digits(to_places(degrees, 1))


def _eaten(day: Day, say: Say) -> Iterator[EatenView]:
    meal = ""
    for item, held in zip(day.stop.ate, day.eaten, strict=True):
        when = item.when or meal
        yield EatenView(
            when=when if when != meal else "",
            name=food_name(held, say),
            amount=amount_words(held, say),
            value=say.quantity(held.shown.value, Measure.ENERGY),
        )
        meal = when


def _prompt(told: StopInLesson[DayStop]) -> str:
    return plain(told.stop.prompt or told.stop.person.name)


def _slides(told: StopInLesson[DayStop]) -> tuple[Question, ...]:
    return (Question(told.plain_heading, _prompt(told)),)


def _table(told: StopInLesson[DayStop]) -> tuple[str, ...]:
    return tuple(weighed(held, told.say) for held in told.result.days[told.id].eaten)


def _plan(view: DayView, say: Say) -> str:  # noqa: ARG001  # the same for every day
    return say("plan_day")


def _sources(view: DayView) -> tuple[SourceView, ...]:
    return view.sources


KIND = StopKind(
    stop=DayStop,
    sees=DayView,
    view=_view,
    holds_player=False,
    paper=Paper.WHOLE,
    paper_style=True,
    slides=_slides,
    task=_prompt,
    table=_table,
    plan=_plan,
    answers=nothing,
    discussion=nothing,
    sources=_sources,
    cards=nothing,
    styles=("work", "day"),
    script="day",
    read_aloud=("> p",),
)
