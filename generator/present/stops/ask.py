"""An ask stop: a question, its hint and its answer on request."""

from __future__ import annotations

from dataclasses import dataclass, replace

from markupsafe import Markup

from generator.model.stops.ask import AskStop
from generator.present.recording.slides.slide import Question
from generator.present.stops.asked_question import asked_question
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import Doing, Paper, StopKind, little, nothing
from generator.present.views.asked import AskedView
from generator.present.views.notes import AnswerView
from generator.present.views.question import QuestionView
from generator.present.views.stop import Head
from generator.present.words.asked import choices_view, computed_view
from generator.present.words.prose import inline, plain
from generator.present.words.say import Say


@dataclass(frozen=True, slots=True)
class AskView:
    """A question with hint and reveal."""

    head: Head
    prompt: Markup
    hint: Markup
    """Empty where there is none."""
    reveal: Markup
    asked: AskedView | None
    """What can be checked of it; nothing where the question is open."""
    before: str
    """Id of the stop that asks it again, until when hint and answer wait; empty elsewhere."""


def _question(told: StopInLesson[AskStop]) -> StopInLesson[AskStop]:
    """The stop whose question it asks: its own, or the one that it asks again."""
    stops = told.result.lesson.file.stops
    for index, stop in enumerate(stops):
        if isinstance(stop, AskStop) and told.result.lesson.stop_id(index) == told.stop.asks_again:
            return replace(told, stop=stop, index=index)
    return told


def _asked(told: StopInLesson[AskStop]) -> AskedView | None:
    first = _question(told)
    if first.stop.choices:
        return choices_view(told.id, first.stop.choices, told.say)
    return computed_view(told.id, told.result, told.say, asked_by=first.id)


def _before(told: StopInLesson[AskStop]) -> str:
    return told.result.lesson.asked_again.get(told.id, "")


def _view(told: StopInLesson[AskStop]) -> AskView:
    stop = _question(told).stop
    return AskView(
        head=told.head(),
        prompt=inline(stop.prompt or ""),
        hint=inline(stop.hint) if stop.hint else Markup(""),
        reveal=inline(stop.reveal or ""),
        asked=_asked(told),
        before=_before(told),
    )


def _slides(told: StopInLesson[AskStop]) -> tuple[Question, ...]:
    return (Question(told.plain_heading, _task(told)),)


def _task(told: StopInLesson[AskStop]) -> str:
    return plain(_question(told).stop.prompt or "")


def _plan(view: AskView, say: Say) -> str:
    if view.before:
        return say("plan_ask_before")
    if view.asked is None:
        return say("plan_ask")
    return say("plan_ask_choice" if view.asked.options else "plan_ask_number")


def _look_for(told: StopInLesson[AskStop]) -> tuple[str, ...]:
    """Of a question with an answer what leads to it, of an open one how it is talked about."""
    say, asked = told.say, _asked(told)
    if asked is None:
        return (say("look_ask"),)
    if _before(told):
        return (say("look_ask_before"),)
    if _question(told).stop.choices:
        return (say("look_ask_choice"),)
    if asked.options:
        return (say("look_ask_which", held=asked.working),)
    return (say("look_ask_number", working=asked.working or asked.answer),)


def _answers(told: StopInLesson[AskStop], view: AskView) -> tuple[AnswerView, ...]:
    """The answer that can be checked, with its working; of an open question what is revealed.

    Where the question is asked again, the answer stands there.
    """
    if view.before:
        return (AnswerView(told.heading, (view.prompt,), told.say("asked_before_notes"), ()),)
    if view.asked is None:
        return (AnswerView(told.heading, (view.prompt,), view.reveal, ()),)
    lines = (view.asked.working,) if view.asked.working else ()
    says = Markup(" ").join((view.asked.says, view.reveal))
    return (AnswerView(told.heading, (view.prompt, *lines), says, ()),)


def _questions(told: StopInLesson[AskStop], view: AskView) -> tuple[QuestionView, ...]:
    """The question, unless it is open or asked again later: what is answered here does not count yet."""
    if view.asked is None or view.before:
        return ()
    stop = _question(told).stop
    texts = (stop.prompt or "", stop.hint or "", stop.reveal or "")
    return (asked_question(told.id, told.plain_heading, texts, view.asked, told.say),)


KIND = StopKind(
    stop=AskStop,
    sees=AskView,
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
    questions=_questions,
    discussion=nothing,
    look_for=_look_for,
    sources=nothing,
    sources_on_page=False,
    cards=nothing,
    styles=(),
    script=None,
    read_aloud=(".choice",),
)
