"""A question with an answer that is checked, as one that can be asked away from its page."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal

from generator.model.figure import FigureKind
from generator.present.views.asked import AskedView
from generator.present.views.question import QuestionView, WrongView
from generator.present.words.likely import WrongAnswer
from generator.present.words.prose import plain
from generator.present.words.say import Say
from generator.present.words.typed import typed


def asked_question(
    stop: str, title: str, texts: tuple[str, str, str], asked: AskedView, say: Say
) -> QuestionView:
    """The question of an ask stop, or the parting question.

    Args:
        stop: id of the stop that asks.
        title: what it is called.
        texts: prompt, hint and reveal as they are written; the last two may be empty.
        asked: what there is to choose or to write.
        say: the words of the page.
    """
    prompt, hint, reveal = (plain(text) for text in texts)
    afterwards = (asked.working, plain(asked.says), reveal)
    return QuestionView(
        id=f"{stop}.{FigureKind.ANSWER}",
        title=title,
        lines=(prompt, *_what_to_write(asked, say)),
        options=asked.options,
        right=(asked.right,) if asked.options else typed(Decimal(asked.right), say, asked.unit),
        wrong=(),
        hint=hint,
        answer=tuple(filter(None, afterwards)),
    )


def wrong_views(answers: Iterable[WrongAnswer], say: Say) -> tuple[WrongView, ...]:
    """Likely wrong answers as they may be typed."""
    return tuple(WrongView(typed(one.value, say), one.say_next) for one in answers)


def _what_to_write(asked: AskedView, say: Say) -> tuple[str, ...]:
    if asked.options:
        return ()
    if asked.unit:
        return (say("platform_number_in", unit=asked.unit),)
    return (say("platform_number"),)
