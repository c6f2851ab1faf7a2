"""A talk stop: something to talk over, with ideas to begin with."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from generator.model.stops.talk import TalkStop
from generator.present.recording.slides.slide import Question
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import Doing, Paper, StopKind, nothing
from generator.present.views.notes import DiscussionView
from generator.present.views.stop import Head
from generator.present.words.prose import inline, plain
from generator.present.words.say import Say


@dataclass(frozen=True, slots=True)
class TalkView:
    """Something to talk over."""

    head: Head
    prompt: Markup
    ideas: tuple[Markup, ...]


def _view(told: StopInLesson[TalkStop]) -> TalkView:
    stop = told.stop
    return TalkView(
        head=told.head(), prompt=inline(stop.prompt), ideas=tuple(map(inline, stop.ideas))
    )


def _slides(told: StopInLesson[TalkStop]) -> tuple[Question, ...]:
    return (Question(told.plain_heading, plain(told.stop.prompt)),)


def _task(told: StopInLesson[TalkStop]) -> str:
    return plain(told.stop.prompt)


def _plan(view: TalkView, say: Say) -> str:  # noqa: ARG001  # the same for every talk
    return say("plan_talk")


def _discussion(view: TalkView) -> tuple[DiscussionView, ...]:
    return (DiscussionView(view.prompt, view.ideas),)


def _work(view: TalkView) -> int:  # noqa: ARG001  # the same for every talk
    return 2


KIND = StopKind(
    stop=TalkStop,
    sees=TalkView,
    view=_view,
    holds_player=False,
    paper=Paper.WHOLE,
    paper_style=False,
    slides=_slides,
    task=_task,
    table=nothing,
    plan=_plan,
    doing=Doing.TALK,
    work=_work,
    answers=nothing,
    questions=nothing,
    discussion=_discussion,
    look_for=nothing,
    sources=nothing,
    sources_on_page=False,
    cards=nothing,
    styles=(),
    script=None,
    read_aloud=("h3", "li"),
)
