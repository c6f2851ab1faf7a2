"""What a kind of stop must supply, as one record; nothing has a default, so that mypy names what is left out."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum
from typing import Generic, TypeVar

from generator.model.stops.base import BaseStop
from generator.present.recording.slides.slide import Content
from generator.present.stops.in_lesson import StopInLesson
from generator.present.views.amounts import SourceView
from generator.present.views.move_card import MoveCardView
from generator.present.views.notes import AnswerView, DiscussionView
from generator.present.views.question import QuestionView
from generator.present.views.stop import StopView
from generator.present.words.say import Say

S = TypeVar("S", bound=BaseStop)
V = TypeVar("V", bound=StopView)


class Doing(Enum):
    """What the time of a stop beside the film is for; the value ends the key of its words."""

    WATCH = "watch"
    WORK_OUT = "work_out"
    MOVE = "move"
    TALK = "talk"


class Paper(Enum):
    """How a stop stands on the worksheet."""

    LEFT_OUT = "left out"
    """There is nothing to do on paper; it has no ``paper.html``."""
    WHOLE = "whole"
    """Never torn over two sheets."""
    IN_PARTS = "in parts"
    """Long: torn between its problems."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StopKind(Generic[S, V]):
    """A kind of stop. Its templates, styles and element stand in ``theme/stops/<kind>/``."""

    stop: type[S]
    """Its model."""
    sees: type[V]
    """What its templates see."""
    view: Callable[[StopInLesson[S]], V]
    """A stop as its templates see it."""
    holds_player: bool
    """Whether the video stands in the first stop of this kind."""
    paper: Paper
    """How it stands on the worksheet."""
    paper_style: bool
    """Whether it has a ``paper.css`` of its own."""
    slides: Callable[[StopInLesson[S]], tuple[Content, ...]]
    """What the video shows while its script is spoken; at least one slide."""
    task: Callable[[StopInLesson[S]], str]
    """What to do now, on the slide at its pause point; empty where it never pauses."""
    table: Callable[[StopInLesson[S]], tuple[str, ...]]
    """What lies on the table while it is filmed."""
    plan: Callable[[V, Say], str]
    """What a class does there, for the time plan of the notes."""
    doing: Doing
    """What its time is for."""
    work: Callable[[V], int]
    """How much there is to do beside the film, in shares of the lesson's time: ours, no source."""
    answers: Callable[[StopInLesson[S], V], tuple[AnswerView, ...]]
    """Its answers for the teacher."""
    questions: Callable[[StopInLesson[S], V], tuple[QuestionView, ...]]
    """Its answers that count as questions that a learning platform can ask, in the order of the stop."""
    discussion: Callable[[V], tuple[DiscussionView, ...]]
    """What of it the notes list to talk over."""
    look_for: Callable[[StopInLesson[S]], tuple[str, ...]]
    """What a teacher looks for while children work at it, for the notes."""
    sources: Callable[[V], tuple[SourceView, ...]]
    """Where its numbers come from."""
    sources_on_page: bool
    """Whether its part of the lesson page shows them all, so that the notes lead there."""
    cards: Callable[[V], tuple[MoveCardView, ...]]
    """Its movement cards."""
    styles: tuple[str, ...]
    """Styles that are linked before the first stop of its kind, in order.

    A name is an entry of ``theme/css/``, which other kinds may share, or a kind: its ``style.css``.
    """
    script: str | None
    """The script that is linked before the first stop of its kind, for its ``element.js``.

    A name is an entry of ``theme/js/``, which other kinds may share, or the kind: its element alone.
    Nothing where it has no element.
    """
    read_aloud: tuple[str, ...]
    """What of it is read aloud besides its heading, question, hint and answer: selectors inside it."""

    @property
    def name(self) -> str:
        """The key that begins it in a lesson file."""
        return self.stop.kind_name()


def nothing(*_: object) -> tuple[()]:
    """What a kind without answers, sources, cards … supplies."""
    return ()


def little(_: object) -> int:
    """The work of a kind that is done with one question: one share."""
    return 1
