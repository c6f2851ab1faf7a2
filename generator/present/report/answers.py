"""The answers of a lesson as a report shows them, and which of them most codes did not have at first."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from generator.compute.answered import Answered
from generator.present.report.told import share
from generator.present.report.view import AnswerView
from generator.present.words.say import Say


def answers_view(
    answers: Sequence[Answered], names: Mapping[str, str], at_least: int, say: Say
) -> tuple[AnswerView, ...]:
    """The answers, in the order in which they are given.

    Args:
        answers: what may be said of each.
        names: what they are called, by id; others are told by their ids.
        at_least: the smallest count that is shown.
        say: the language.
    """
    return tuple(_answer(one, names, at_least, say) for one in answers)


def missed_by_most(answers: Sequence[Answered], names: Mapping[str, str]) -> tuple[str, ...]:
    """What more than half did not have at first, as far as that is shown, fewest first."""
    missed = sorted((one for one in answers if one.missed), key=_right)
    return tuple(names.get(one.answer, one.answer) for one in missed)


def _right(one: Answered) -> int:
    """How many had it at first; the same for all that are hidden, for an order would tell of them."""
    return one.first.count if isinstance(one.first.count, int) else 0


def _answer(one: Answered, names: Mapping[str, str], at_least: int, say: Say) -> AnswerView:
    name, known = names.get(one.answer, one.answer), one.answer in names
    first, last = (share(name, part, at_least, say, known=known) for part in (one.first, one.last))
    return AnswerView(first, " · ".join(filter(None, (last.told, last.percent))))
