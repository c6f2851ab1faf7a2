"""The parting question of a lesson, on its page, on paper and in the notes."""

from __future__ import annotations

from markupsafe import Markup

from generator.compute.answers import PARTING
from generator.compute.result import LessonResult
from generator.present.stops.asked_question import asked_question
from generator.present.views.asked import PartingView
from generator.present.views.notes import AnswerView
from generator.present.views.question import QuestionView
from generator.present.words.asked import computed_view
from generator.present.words.prose import inline
from generator.present.words.say import Say


def parting_view(result: LessonResult, say: Say) -> PartingView | None:
    """The question with its answer; nothing where the lesson has none."""
    parting = result.lesson.file.parting
    asked = computed_view(PARTING, result, say)
    if parting is None or asked is None:
        return None
    return PartingView(
        prompt=inline(parting.prompt),
        hint=inline(parting.hint) if parting.hint else Markup(""),
        reveal=inline(parting.reveal) if parting.reveal else Markup(""),
        asked=asked,
    )


def parting_question(result: LessonResult, say: Say) -> tuple[QuestionView, ...]:
    """The question as a learning platform asks it; none where the lesson has no parting question."""
    parting, asked = result.lesson.file.parting, computed_view(PARTING, result, say)
    if parting is None or asked is None:
        return ()
    texts = (parting.prompt, parting.hint or "", parting.reveal or "")
    return (asked_question(PARTING, say("parting_title"), texts, asked, say),)


def parting_answer(result: LessonResult, say: Say) -> tuple[AnswerView, ...]:
    """The answer for the teacher; none where the lesson has no parting question."""
    view = parting_view(result, say)
    if view is None:
        return ()
    lines = (view.asked.working,) if view.asked.working else ()
    says = Markup(" ").join((view.asked.says, view.reveal))
    return (AnswerView(say("parting_title"), (view.prompt, *lines), says, ()),)
