"""A day as questions that can be asked away from its page: which way it leans, and by how much."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.counted import AnswerKind
from generator.compute.day import DayBalance, Lean
from generator.model.figure import FigureKind
from generator.model.measure import Measure
from generator.model.stops.compare import Help
from generator.model.stops.day import DayStop
from generator.present.stops.asked_question import wrong_views
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.row import row_hint
from generator.present.views.asked import OptionView
from generator.present.views.question import QuestionView
from generator.present.words.amounts import subtraction
from generator.present.words.day import leaning, who
from generator.present.words.families import CHOICE
from generator.present.words.likely import wrong_gaps
from generator.present.words.typed import typed


def day_questions(told: StopInLesson[DayStop], _: object) -> tuple[QuestionView, ...]:
    """Which way it leans; before it what lies between both sums, where that is asked."""
    return tuple(_questions(told, told.result.days[told.id].balance))


def _questions(told: StopInLesson[DayStop], balance: DayBalance) -> Iterator[QuestionView]:
    say = told.say
    known = _known(told, balance)
    afterwards = (subtraction(balance.both, say), leaning(balance, say))
    if told.stop.help is not Help.WORKED:
        yield QuestionView(
            id=f"{told.id}.{FigureKind.GAP}",
            title=f"{told.plain_heading}. {say('day_by_how_much')}",
            lines=(*known, say("day_by_how_much")),
            options=(),
            right=typed(balance.gap, say, Measure.ENERGY.unit),
            wrong=wrong_views(wrong_gaps(balance.both, say), say),
            hint=row_hint(balance.both, say),
            answer=afterwards,
        )
    band = say("day_band", most=say.quantity(balance.even_within, Measure.ENERGY))
    yield QuestionView(
        id=f"{told.id}.{AnswerKind.LEAN}",
        title=f"{told.plain_heading}. {say('day_question')}",
        lines=(*known, band, say("day_question")),
        options=tuple(
            OptionView(lean.value, say(CHOICE.key(lean)), lean is balance.lean) for lean in Lean
        ),
        right=(balance.lean.value,),
        wrong=(),
        hint="",
        answer=afterwards,
    )


def _known(told: StopInLesson[DayStop], balance: DayBalance) -> tuple[str, ...]:
    """Whose day it is, and both sums."""
    say = told.say
    return (
        who(told.stop.person, say),
        f"{say('day_eaten')} {say.quantity(balance.eaten, Measure.ENERGY)}.",
        f"{say('day_needed')} {say.quantity(balance.needed, Measure.ENERGY)}.",
    )
