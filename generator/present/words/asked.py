"""A question whose answer can be checked, put into words."""

from __future__ import annotations

from fractions import Fraction

from generator.compute.arithmetic import in_line
from generator.compute.holding import Holding
from generator.compute.result import ChosenAnswer, LessonResult, NumberAnswer
from generator.model.asked import Choice
from generator.present.views.asked import AskedView, OptionView
from generator.present.words.amounts import portion
from generator.present.words.say import Say, as_decimal, digits


def choices_view(stop: str, choices: tuple[Choice, ...], say: Say) -> AskedView:
    """A question with the educator's own choices."""
    options = tuple(
        OptionView(str(number), one.says, one.right) for number, one in enumerate(choices)
    )
    return _chosen(stop, options, "", say)


def computed_view(
    stop: str, result: LessonResult, say: Say, asked_by: str | None = None
) -> AskedView | None:
    """A question whose answer the lesson computes; nothing where it computes none.

    Args:
        stop: id of the stop that asks, or what the parting question is called.
        result: the lesson with its answers.
        say: the words of the page.
        asked_by: id of the stop that asks it first, where this one asks it again.
    """
    answer = result.answers.get(asked_by or stop)
    if isinstance(answer, ChosenAnswer):
        return _chosen(stop, _options(answer, result, say), _held(answer, say), say)
    return _number(stop, answer, say) if isinstance(answer, NumberAnswer) else None


def _number(stop: str, answer: NumberAnswer, say: Say) -> AskedView:
    shown = _held(answer, say) if answer.unit else say.number(answer.value)
    written = in_line(
        say.number(as_decimal(part)) if isinstance(part, Fraction) else part
        for part in answer.parts
    )
    return AskedView(
        form=f"{stop}--answer",
        options=(),
        right=digits(answer.value),
        unit=str(answer.unit or ""),
        answer=shown,
        working=say.from_left(f"{written} = {say.number(answer.value)}")
        if len(answer.parts) > 1
        else "",
        says=say("answer_is", answer=shown),
    )


def _chosen(stop: str, options: tuple[OptionView, ...], working: str, say: Say) -> AskedView:
    right = next(one for one in options if one.right)
    return AskedView(
        form=f"{stop}--answer",
        options=options,
        right=right.value,
        unit="",
        answer=right.says,
        working=working,
        says=say("answer_is", answer=right.says.removesuffix(".") if right.says else ""),
    )


def _options(answer: ChosenAnswer, result: LessonResult, say: Say) -> tuple[OptionView, ...]:
    comparison = result.comparisons[answer.comparison]
    found = []
    for number, one in enumerate(answer.options):
        right = number == answer.right
        if isinstance(one, Holding):
            found.append(OptionView(_name(one), portion(one, say), right))
        else:
            side = comparison.stop.sides[one]
            found.append(OptionView(comparison.side_ids[one], side, right))
    return tuple(found)


def _held(answer: ChosenAnswer | NumberAnswer, say: Say) -> str:
    """What it comes to, or what the right one holds, with its unit."""
    return say.from_left(f"{say.number(answer.value)}\N{NO-BREAK SPACE}{answer.unit}")


def _name(held: Holding) -> str:
    return f"{held.id} {held.item.amount or ''}".strip()
