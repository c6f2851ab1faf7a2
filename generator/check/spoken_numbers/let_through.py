"""Numbers that an educator gave herself, at the stop where she gave them."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction
from functools import cached_property

from generator.check.held_texts import HeldText, Medium, amounts_named
from generator.check.spoken_numbers.given import Given, given
from generator.check.spoken_numbers.meant import Beside
from generator.compute.result import LessonResult
from generator.language.number import Number
from generator.model.captions import MEANT_NOTE
from generator.model.figure import FigureKind


class Passing:
    """Lets numbers of one text pass that are none of the lesson's figures; looked up only once asked."""

    def __init__(
        self, result: LessonResult, texts: Sequence[HeldText], text: HeldText, last: int
    ) -> None:
        self._result, self._texts, self._text, self._last = result, texts, text, last

    def mark(self, number: Number) -> str:
        """How to say that a number is meant, and none of the lesson's."""
        words = " ".join(number.text.split())
        if self._text.medium is Medium.CAPTIONS:
            return f"put a note before the cue: `{MEANT_NOTE} {words}`"
        return f"mark it as meant: {{{words}}}"

    def repeats(self, number: Number, near: Beside) -> bool:
        """Whether a number says how often an amount is taken, or how many moves there are."""
        if not self._text.language.said_of.counts.match(near.tail):
            return False
        if not any(figure.kind is FigureKind.COUNT for figure in self._result.figures):
            return True  # nothing is counted in the lesson: it is done as often as it is said
        return Fraction(number.value) in self._amounts or (
            number.in_words and number.value in self._moves
        )

    def passes(self, number: Number, near: Beside) -> bool:
        """Whether a number that nothing is said to hold is an amount, or an age."""
        if self._text.language.around.holds_before.search(near.head):
            return False
        known = self._text.language.said_of.units.items()
        unit = next((unit for unit, pattern in known if pattern.match(near.tail)), None)
        return (number.value, unit) in self._given

    def offered(self, number: Number, sentence: str) -> bool:
        """Whether it is one of the numbers to choose an estimate from, said with all the others."""
        if self._text.stop is None:
            return False
        choices = {*self._result.lesson.file.stops[self._text.stop].own_numbers}
        said = {one.value for one in self._text.language.numbers_in(sentence)}
        return len(choices) > 1 and number.value in choices <= said

    @cached_property
    def _given(self) -> Given:
        return given(self._result, self._last)

    @cached_property
    def _amounts(self) -> frozenset[Fraction]:
        return amounts_named(self._texts, self._text.stop, self._text.language.claims)

    @cached_property
    def _moves(self) -> frozenset[Decimal]:
        """How many moves the lesson has at a stop: *here are three moves*."""
        return frozenset(Decimal(len(one.stop.moves)) for one in self._result.movements.values())
