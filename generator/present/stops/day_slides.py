"""The slides of a day: the day, then its two numbers, then how they are subtracted."""

from __future__ import annotations

from dataclasses import replace

from generator.model.figure import FigureKind
from generator.model.measure import Measure
from generator.model.stops.compare import Help
from generator.model.stops.day import DayStop
from generator.present.pictures.plumb_line import plumb_tilt
from generator.present.recording.slides.slide import BothNumbers, Content, Question
from generator.present.stops.in_lesson import StopInLesson
from generator.present.words.amounts import subtraction
from generator.present.words.families import HANGS
from generator.present.words.prose import plain


def day_slides(told: StopInLesson[DayStop]) -> tuple[Content, ...]:
    """The day, then its two numbers, then how they are subtracted where that is shown."""
    question, numbers = Question(told.plain_heading, day_task(told)), _both_numbers(told)
    if told.stop.help is not Help.WORKED:
        return question, numbers
    balance = told.result.days[told.id].balance
    known = replace(
        numbers,
        working=subtraction(balance.both, told.say),
        tilt=plumb_tilt(balance.ratio),
        hangs=told.say(HANGS.key(balance.lean)),
        shows=(*numbers.shows, f"{told.id}.{FigureKind.GAP}"),
    )
    return question, numbers, known


def day_task(told: StopInLesson[DayStop]) -> str:
    """What to do at the day, or at least whose it is."""
    return plain(told.stop.prompt or told.stop.person.name)


def _both_numbers(told: StopInLesson[DayStop]) -> BothNumbers:
    say, balance = told.say, told.result.days[told.id].balance
    return BothNumbers(
        heading=told.plain_heading,
        gave_says=say("day_eaten"),
        gave=say.quantity(balance.eaten, Measure.ENERGY),
        took_says=say("day_needed"),
        took=say.quantity(balance.needed, Measure.ENERGY),
        working="",
        tilt="",
        lean=balance.lean.value,
        hangs=say("day_hangs_unknown"),
        shows=(f"{told.id}.{FigureKind.EATEN}", f"{told.id}.{FigureKind.NEEDED}"),
    )
