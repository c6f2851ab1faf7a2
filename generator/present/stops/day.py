"""A day stop: which way it leans, and by how much, from two numbers that both stand there."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import accumulate, groupby
from operator import itemgetter

from markupsafe import Markup

from generator.compute.day import Lean
from generator.compute.holding import Holding
from generator.compute.result import Day
from generator.model.measure import Measure
from generator.model.stops.compare import Help
from generator.model.stops.day import DayStop
from generator.present.pictures.number_line import number_line
from generator.present.pictures.plumb_line import plumb_tilt
from generator.present.stops.day_questions import day_questions
from generator.present.stops.day_slides import day_slides, day_task
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import Doing, Paper, StopKind, nothing
from generator.present.stops.row import row_hint
from generator.present.views.amounts import SourceView
from generator.present.views.notes import AnswerView
from generator.present.views.number import Number
from generator.present.views.stop import Head
from generator.present.words.amounts import food_name, subtraction, weighed
from generator.present.words.counting import count_up_words
from generator.present.words.day import leaning, who
from generator.present.words.families import CHOICE, HANGS
from generator.present.words.food_amount import amount_words
from generator.present.words.likely import gap_likely, sum_likely
from generator.present.words.look_for import in_a_day
from generator.present.words.number import quantity
from generator.present.words.prose import inline
from generator.present.words.say import Say, digits
from generator.present.words.sources import holding_sources


@dataclass(frozen=True, slots=True)
class EatenView:
    """A food of a day."""

    name: str
    amount: str
    value: str
    """Energy with its unit."""


@dataclass(frozen=True, slots=True)
class MealView:
    """What was eaten at one meal of a day."""

    name: str
    """Empty where foods stand before the first meal that has a name."""
    ate: tuple[EatenView, ...]


@dataclass(frozen=True, slots=True)
class DayView:
    """An invented adult's day: two numbers to compare, and which way it leans."""

    head: Head
    prompt: Markup
    person: str
    """Who it is, in a sentence."""
    ate_says: str
    """``What Mina ate``"""
    meals: tuple[MealView, ...]
    did_says: str
    did: tuple[str, ...]
    help: str
    """How much of the subtraction stands there: ``worked``, ``hops`` or ``none``."""
    hops: Markup
    """The hops without their sizes, where they help; else empty."""
    line: Markup
    """Counting up along a number line."""
    count_up: str
    """The same in words; empty where both numbers are equal."""
    hint: str
    """The first step."""
    choices: tuple[tuple[str, str], ...]
    """Value and wording of each way the day may lean."""
    lean: str
    """The value of the way it does lean."""
    gave: str
    """What the day gave, in digits."""
    took: str
    """What the day took, in digits."""
    most: str
    """The largest gap that is about even, in digits."""
    gap: Number
    """How far apart, with its unit."""
    answer: str
    """Which way, in a sentence."""
    eaten: str
    """What the day gave, with unit."""
    needed: str
    """What the day took, with unit."""
    sum: str
    """``170 + 90 = 260``, in shown numbers."""
    subtraction: str
    """``2,430 − 1,880 = 550``"""
    tilt: str
    """Degrees clockwise of the plumb line; positive where the day gave more and it hangs to the left."""
    hangs: str
    """What the picture shows, in a sentence."""
    band: str
    """The largest gap that is about even, in a sentence."""
    reveal: Markup
    sources: tuple[SourceView, ...]
    """For the teaching notes: a day has many foods, and its page links there."""
    sources_at: str
    """Path of that part of the notes."""


def _view(told: StopInLesson[DayStop]) -> DayView:
    stop, say = told.stop, told.say
    day = told.result.days[told.id]
    balance, person, gap = day.balance, stop.person, day.balance.both
    numbers = " + ".join(say.number(held.shown.value) for held in day.eaten)
    return DayView(
        head=told.head(),
        prompt=inline(stop.prompt) if stop.prompt else Markup(""),
        person=who(person, say),
        ate_says=say("day_ate", name=person.name),
        meals=tuple(_meals(day, say)),
        did_says=say("day_did", name=person.name),
        did=stop.did,
        help=stop.help,
        hops=number_line(gap, say, sized=False) if stop.help is Help.HOPS else Markup(""),
        line=number_line(gap, say),
        count_up=count_up_words(gap, say),
        hint=row_hint(gap, say),
        choices=tuple((lean.value, say(CHOICE.key(lean))) for lean in Lean),
        lean=balance.lean.value,
        gave=digits(balance.eaten),
        took=digits(balance.needed),
        most=digits(balance.even_within),
        gap=quantity(balance.gap, Measure.ENERGY, say),
        answer=leaning(balance, say),
        eaten=say.quantity(balance.eaten, Measure.ENERGY),
        needed=say.quantity(balance.needed, Measure.ENERGY),
        sum=say.from_left(f"{numbers} = {say.number(balance.eaten)}"),
        subtraction=subtraction(gap, say),
        tilt=plumb_tilt(balance.ratio),
        hangs=say(HANGS.key(balance.lean)),
        band=say("day_band", most=say.quantity(balance.even_within, Measure.ENERGY)),
        reveal=inline(stop.reveal) if stop.reveal else Markup(""),
        sources=holding_sources(day.eaten, Measure.ENERGY, say),
        sources_at=f"{told.folder}notes.html#from-{told.id}",
    )


def _meals(day: Day, say: Say) -> Iterator[MealView]:
    """Each meal with its foods: a food that names none belongs to the meal above it."""
    named = accumulate((item.when or "" for item in day.stop.ate), _meal_of)
    eaten = zip(named, day.eaten, strict=True)
    for name, foods in groupby(eaten, key=itemgetter(0)):
        yield MealView(name, tuple(_eaten(held, say) for _, held in foods))


def _meal_of(above: str, when: str) -> str:
    return when or above


def _eaten(held: Holding, say: Say) -> EatenView:
    return EatenView(
        name=food_name(held, say),
        amount=amount_words(held, say),
        value=say.quantity(held.shown.value, Measure.ENERGY),
    )


def _table(told: StopInLesson[DayStop]) -> tuple[str, ...]:
    return tuple(weighed(held, told.say) for held in told.result.days[told.id].eaten)


def _plan(view: DayView, say: Say) -> str:  # noqa: ARG001  # the same for every day
    return say("plan_day")


def _answers(told: StopInLesson[DayStop], view: DayView) -> tuple[AnswerView, ...]:
    """Sum and difference, with the wrong ones that are likely."""
    day, say = told.result.days[told.id], told.say
    likely = (
        *sum_likely([held.shown.value for held in day.eaten], say),
        *gap_likely(day.balance.both, say),
    )
    return (AnswerView(view.head.heading, (view.sum, view.subtraction), view.answer, likely),)


def _look_for(told: StopInLesson[DayStop]) -> tuple[str, ...]:
    return tuple(in_a_day(told.result.days[told.id].balance, told.say))


def _sources(view: DayView) -> tuple[SourceView, ...]:
    return view.sources


def _work(view: DayView) -> int:  # noqa: ARG001  # the same for every day
    return 3


KIND = StopKind(
    stop=DayStop,
    sees=DayView,
    view=_view,
    holds_player=False,
    paper=Paper.IN_PARTS,
    paper_style=True,
    slides=day_slides,
    task=day_task,
    table=_table,
    plan=_plan,
    doing=Doing.WORK_OUT,
    work=_work,
    answers=_answers,
    questions=day_questions,
    discussion=nothing,
    look_for=_look_for,
    sources=_sources,
    sources_on_page=False,
    cards=nothing,
    styles=("work", "day"),
    script="day",
    read_aloud=(
        *("> p", "h3", ".day th", ".day td", "ul li", ".either-side"),
        *("form > p:not(.band)", ".answer label", "legend", ".choice"),
    ),
)
