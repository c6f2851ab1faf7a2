"""One row as the page for finish codes writes it: what counts of it, and nothing of whose it is."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

WANTED = ("lesson", "numbers", "code", "stops", "answers", "before", "after", "minutes")
"""Columns that a file must have. ``label`` may be there and is not looked at."""
_ID = r"[A-Za-z0-9][A-Za-z0-9_.-]{0,99}"
_LESSON = re.compile(_ID, re.ASCII)
_NUMBERS = re.compile(r"[A-Za-z0-9-]{1,40}", re.ASCII)
_CODE = re.compile(r"[A-Za-z0-9*~$=-]{6,120}", re.ASCII)
_STOPS = re.compile(rf"(?:{_ID}(?: {_ID})*)?", re.ASCII)
_TOLD = re.compile(rf"(?:{_ID}=(?:right|wrong|none)(?: {_ID}=(?:right|wrong|none))*)?", re.ASCII)
_ANSWER = r"[A-Za-z0-9][A-Za-z0-9_.-]{0,299}=(?:first|later|no)"
"""An id of an answer is longer than others: stop, both foods of its row, and what is asked."""
_ANSWERS = re.compile(rf"(?:{_ANSWER}(?: {_ANSWER})*)?", re.ASCII)
_MINUTES = re.compile(r"(under )?(\d{1,3})(?: to \d{1,3}| or more)?", re.ASCII)
"""``under 5``, ``5 to 9``, ``60 or more``, or where the step begins alone."""
_SHAPES = {
    "lesson": (_LESSON, "no id of a lesson"),
    "numbers": (_NUMBERS, "no mark of a lesson's numbers"),
    "code": (_CODE, "no finish code"),
    "stops": (_STOPS, "something else than ids of stops with a space between them"),
    "answers": (_ANSWERS, "something else than answers such as parting.answer=first"),
    "before": (_TOLD, "something else than answers such as first-guess=right"),
    "after": (_TOLD, "something else than answers such as first-guess=right"),
    "minutes": (_MINUTES, "no minutes, such as 5 to 9"),
}
"""By column: what a cell looks like, and what it holds when it does not."""
_SHORT = {"right": "r", "wrong": "w", "none": "n", "first": "f", "later": "l", "no": "n"}
_ALIKE = str.maketrans({"O": "0", "I": "1", "L": "1", "-": None})
"""Letters that stand for a digit in a code (Crockford, base 32), and the hyphens between its symbols."""


@dataclass(frozen=True, slots=True)
class CodeRow:
    """What counts of a row; each is plain ASCII without a tab."""

    lesson: str
    """Its id."""
    numbers: str
    """The mark of its numbers."""
    code: str
    """Its symbols, in capitals and without hyphens, so that equal codes are equal here."""
    stops: str
    """Ids with a space between them, each once."""
    pairs: str
    """``question=rw`` with a space between them: right, wrong or not answered, before and after."""
    answers: str
    """``answer=f`` with a space between them: right at first, later, or not."""
    minutes: str
    """Where their step begins."""


def code_row(cells: Sequence[str], at: Mapping[str, int]) -> CodeRow | str:
    """A row, or why it is none: a sentence that repeats nothing of what stands in it.

    Args:
        cells: as they stand.
        at: where each wanted column stands.
    """
    told = {name: cells[place].strip().removeprefix("'") for name, place in at.items()}
    for name, (shape, what) in _SHAPES.items():
        if not shape.fullmatch(told[name]):
            return (
                f"the cell `{name}` holds {what}" if told[name] else f"the cell `{name}` is empty"
            )
    pairs = _pairs(told["before"], told["after"])
    if pairs is None:
        return "`before` and `after` name other questions, or one of them twice"
    answers = _answers(told["answers"])
    if answers is None:
        return "the cell `answers` names one of them twice"
    stops = " ".join(dict.fromkeys(told["stops"].split()))
    return CodeRow(
        told["lesson"],
        told["numbers"],
        told["code"].upper().translate(_ALIKE),
        stops,
        pairs,
        " ".join(f"{name}={how}" for name, how in answers.items()),
        _begins(told["minutes"]),
    )


def _begins(minutes: str) -> str:
    """Where a step of minutes begins."""
    found = _MINUTES.fullmatch(minutes)
    return found[2] if found and not found[1] else "0"


def _pairs(before: str, after: str) -> str | None:
    """Both answers to each question; nothing where the two cells do not go together."""
    if not before and not after:
        return ""
    first, second = _answers(before), _answers(after)
    if first is None or second is None or first.keys() != second.keys():
        return None
    return " ".join(f"{name}={first[name]}{second[name]}" for name in first)


def _answers(cell: str) -> dict[str, str] | None:
    """By question; nothing where one is named twice."""
    told = [one.split("=") for one in cell.split()]
    answers = {name: _SHORT[answer] for name, answer in told}
    return answers if len(answers) == len(told) else None
