"""A watch stop: a stretch of the video."""

from __future__ import annotations

import re
from dataclasses import dataclass

from generator.compute.timeline import next_pause, seconds
from generator.model.moment import clock
from generator.model.stops.watch import WatchStop
from generator.present.recording.slides.slide import Line
from generator.present.recording.spoken import paragraphs
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import Doing, Paper, StopKind, nothing
from generator.present.views.stop import Head
from generator.present.words.foreign import like
from generator.present.words.prose import plain
from generator.present.words.say import Say


@dataclass(frozen=True, slots=True)
class WatchView:
    """A stretch of the video."""

    head: Head
    until: str
    """``0:40``"""
    says: str
    """``Watch to 0:54. Then it is your turn.``"""


def _view(told: StopInLesson[WatchStop]) -> WatchView:
    stop = told.stop
    pause = next_pause(told.result.lesson.file.stops, int(stop.start * 1000))
    says = told.say("watch_to_end")
    if pause is not None:
        says = told.say("watch_to_pause", end=clock(seconds(pause)))
    return WatchView(head=told.head(), until=clock(stop.end), says=says)


def _slides(told: StopInLesson[WatchStop]) -> tuple[Line, ...]:
    """A slide for each paragraph of the script; the lesson's first is headed by its title."""
    title = told.plain_heading if told.index else plain(told.result.lesson.file.title)
    lines = [_last_sentence(part) for part in paragraphs(told.stop.say or "")]
    return tuple(Line(title, line) for line in lines or [""])


def _last_sentence(paragraph: str) -> str:
    return plain(like(paragraph, re.split(r"(?<=[.?!]) ", paragraph)[-1]))


def _no_task(told: StopInLesson[WatchStop]) -> str:  # noqa: ARG001  # it never pauses
    return ""


def _plan(view: WatchView, say: Say) -> str:
    return say("watch_from_to", start=view.head.at.text if view.head.at else "", end=view.until)


def _work(view: WatchView) -> int:  # noqa: ARG001  # nothing is to be done beside the film
    return 0


KIND = StopKind(
    stop=WatchStop,
    sees=WatchView,
    view=_view,
    holds_player=True,
    paper=Paper.LEFT_OUT,
    paper_style=False,
    slides=_slides,
    task=_no_task,
    table=nothing,
    plan=_plan,
    doing=Doing.WATCH,
    work=_work,
    answers=nothing,
    questions=nothing,
    discussion=nothing,
    look_for=nothing,
    sources=nothing,
    sources_on_page=False,
    cards=nothing,
    styles=(),
    script=None,
    read_aloud=("> p",),
)
