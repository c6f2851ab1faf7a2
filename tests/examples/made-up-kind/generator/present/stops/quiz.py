"""A quiz stop: choose, then check."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.model.stops.quiz import QuizStop
from generator.present.recording.slides.slide import Question
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import Doing, Paper, StopKind, little, nothing
from generator.present.views.notes import AnswerView
from generator.present.views.stop import Head
from generator.present.words.prose import inline, plain
from generator.present.words.say import Say


@dataclass(frozen=True, slots=True)
class QuizView:
    """A question with its choices."""

    head: Head
    prompt: Markup
    choices: tuple[Markup, ...]
    """In the order of the alphabet, so that none stands out."""
    right: Markup
    """The right one."""


def _view(told: StopInLesson[QuizStop]) -> QuizView:
    stop = told.stop
    return QuizView(
        head=told.head(),
        prompt=inline(stop.prompt),
        choices=tuple(map(inline, sorted(stop.choices))),
        right=inline(stop.choices[0]),
    )


def _slides(told: StopInLesson[QuizStop]) -> tuple[Question, ...]:
    return (Question(told.plain_heading, plain(told.stop.prompt)),)


def _task(told: StopInLesson[QuizStop]) -> str:
    return told.say("quiz_task")


def _plan(view: QuizView, say: Say) -> str:
    return say("plan_quiz", n=len(view.choices))


def _answers(told: StopInLesson[QuizStop], view: QuizView) -> tuple[AnswerView, ...]:
    return (AnswerView(told.heading, (), view.right, ()),)


KIND = StopKind(
    stop=QuizStop,
    sees=QuizView,
    view=_view,
    holds_player=False,
    paper=Paper.WHOLE,
    paper_style=False,
    slides=_slides,
    task=_task,
    table=nothing,
    plan=_plan,
    doing=Doing.WORK_OUT,
    work=little,
    answers=_answers,
    questions=nothing,
    discussion=nothing,
    look_for=nothing,
    sources=nothing,
    sources_on_page=False,
    cards=nothing,
    styles=("quiz",),
    script="quiz",
    read_aloud=("label",),
)
