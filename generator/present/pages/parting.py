"""The parting question of a lesson, on its page, on paper and in the notes."""

from __future__ import annotations

from markupsafe import Markup

from generator.compute.answers import PARTING
from generator.compute.result import LessonResult
from generator.present.views.asked import PartingView
from generator.present.views.notes import AnswerView
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


def parting_answer(result: LessonResult, say: Say) -> tuple[AnswerView, ...]:
    """The answer for the teacher; none where the lesson has no parting question."""
    asked = computed_view(PARTING, result, say)
    if asked is None:
        return ()
    lines = (asked.working,) if asked.working else ()
    return (AnswerView(say("parting_title"), lines, asked.says, ()),)
