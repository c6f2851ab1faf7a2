"""What a number of a lesson is called in words, and how it is written, wherever it stands by itself."""

from __future__ import annotations

from generator.model.figure import FigureKind, Tally
from generator.model.published import PublishedNumber
from generator.present.words.families import NUMBER
from generator.present.words.say import Say

BARE = {FigureKind.COUNT, FigureKind.LEFT_OVER, FigureKind.MINUTES, FigureKind.ONE_MOVE_PER}
"""From the gap on no food is named beside a number: it would read as a price."""


def number_name(number: PublishedNumber, heading: str, say: Say) -> str:
    """``the gap (Apple, Banana)``; from the gap on its stop stands in the place of its foods, and a food is its own name."""
    if number.kind is FigureKind.HOLDS and number.of:
        return number.of
    name = say(NUMBER.key(number.kind))
    of = heading if number.kind in BARE else number.of
    return f"{name} ({of})" if of else name


def number_said(number: PublishedNumber, say: Say) -> str:
    """``320 kcal``, in the numbers of the language; what is counted has no unit."""
    written = say.number(number.value)
    bare = number.unit in set(Tally) or number.kind in {FigureKind.COUNT, FigureKind.LEFT_OVER}
    return written if bare else say.from_left(f"{written}\N{NO-BREAK SPACE}{number.unit}")
