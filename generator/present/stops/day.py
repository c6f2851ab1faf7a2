"""A day stop: decide which way it leans, then check."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from markupsafe import Markup

from generator.compute.day import ABOUT_EVEN, Lean
from generator.compute.result import Day
from generator.compute.rounding import to_places
from generator.model.measure import Measure
from generator.model.stops.day import DayStop
from generator.present.stops.head import Telling, head
from generator.present.views.stops import DayView, EatenView
from generator.present.words.amounts import amount_words, food_name
from generator.present.words.prose import inline
from generator.present.words.say import Say, digits
from generator.present.words.sources import holding_sources

STEEPEST = 14
"""Degrees the beam tilts at most; it stands there when one side is half as much again or more."""


def day_view(index: int, stop: DayStop, telling: Telling) -> DayView:
    """The view of a day."""
    identity, say = head(index, stop, telling), telling.say
    day = telling.result.days[identity.id]
    balance, person = day.balance, stop.person
    numbers = " + ".join(say.number(held.shown.value) for held in day.eaten)
    return DayView(
        head=identity,
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
        sources_at=f"notes.html#from-{identity.id}",
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
