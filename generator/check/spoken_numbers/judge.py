"""Whether a spoken number is one that the lesson computes."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.check.claims.claim import within
from generator.check.claims.mentions import Seat, held_at
from generator.check.held_texts import Said
from generator.check.spoken_numbers.near import belongs_to, called_in, shown
from generator.compute.figure import Figure
from generator.compute.result import Comparison, LessonResult
from generator.language import Language
from generator.language.form import Leeway
from generator.language.number import Number


@dataclass(frozen=True, slots=True)
class Fault:
    """Something wrong with a spoken number."""

    offset: int
    """Where in the speech of its stop."""
    seats: frozenset[Seat]
    """The food it is about, if any."""
    what: str
    """A sentence without a full stop."""
    hint: str
    """A way out, the same."""


@dataclass(frozen=True, slots=True)
class Judge:
    """Judges the numbers of one stop."""

    result: LessonResult
    """The lesson with its numbers."""
    computed: tuple[Figure, ...]
    """What may be spoken of."""
    written: Callable[[], frozenset[Decimal]]
    """What the educator wrote on the page by then; looked up only for a number that is no figure."""
    comparison: Comparison | None
    """The one that is spoken of, if any."""
    language: Language
    """In which the numbers are spoken."""

    def fault(self, said: Said, number: Number, seats: frozenset[Seat]) -> Fault | None:
        """What is wrong with a number that is said of some foods, or of none."""
        leeway = self.language.claims.leeway(" ".join(said.text[: number.start].split()[-3:]))
        offset = said.start + number.start
        if number.nothing and not self._none_of_it(said, number, seats):
            return None  # there may be none of something else
        if self.language.claims.supposed.search(said.text[: number.start]):
            return None
        if self.comparison and seats and (number.measure or self._held(said, number)):
            if self._of_several(said, number, seats):
                return None
            wrong = self._of_food(number, seats, leeway, self.comparison)
            return Fault(offset, seats, *wrong) if wrong else None
        if self._any(number.value, leeway, self.computed) or number.value in self.written():
            return None
        nearest = min(self.computed, key=lambda figure: abs(figure.value - number.value))
        what = f"{_said(number)} is no number of the lesson here"
        return Fault(
            offset,
            seats,
            what,
            f"the nearest is {shown(nearest)}, {called_in(nearest, self.result)}",
        )

    def _of_several(self, said: Said, number: Number, seats: frozenset[Seat]) -> bool:
        """Whether it is what several portions hold: *two cups hold ten grams*."""
        portions = {one.value for one in self.language.numbers_in(said.text) if one != number}
        values = [held_at(self.comparison, seat).shown.value for seat in seats if self.comparison]
        return any(
            many * value == number.value for many in portions if many > 1 for value in values
        )

    def _none_of_it(self, said: Said, number: Number, seats: frozenset[Seat]) -> bool:
        """Whether a food is said to hold none of what is compared."""
        measure = self.comparison.stop.measure if self.comparison else None
        held = number.measure is not None or self._held(said, number)
        return bool(seats) and held and number.measure in {None, measure}

    def _held(self, said: Said, number: Number) -> bool:
        """Whether the number is what a food holds, and no step of a calculation."""
        if self.language.around.more_after.match(said.text[number.end :]):
            return False
        holds = self.language.around.holds_before.search(said.text[: number.start])
        return bool(holds) or not self.language.around.sum_words.search(said.text)

    def _of_food(
        self, number: Number, seats: frozenset[Seat], leeway: Leeway, comparison: Comparison
    ) -> tuple[str, str] | None:
        foods = [held_at(comparison, seat) for seat in sorted(seats)]
        values = [held.shown.value for held in foods]
        if any(_agree(number.value, value, leeway) for value in values):
            return None
        language, unit = self.language.tag, comparison.stop.measure.unit
        names = " or ".join(dict.fromkeys(held.name(language).words for held in foods))
        true = " or ".join(dict.fromkeys(f"{value:,}" for value in values))
        what = f"{_said(number)} is said of “{names}”, which holds {true} {unit}"
        other = next((f for f in self.computed if f.value == number.value), None)
        belongs = f"; {number.value:,} is {belongs_to(other, self.result)}" if other else ""
        return what, f"say {true}, or correct the amount of the food{belongs}"

    @staticmethod
    def _any(value: Decimal, leeway: Leeway, computed: Iterable[Figure]) -> bool:
        return any(_agree(value, figure.value, leeway) for figure in computed)


def _agree(said: Decimal, true: Decimal, leeway: Leeway) -> bool:
    """The same number; with *about* or *almost* as near as the check of claims has it."""
    return said == true or (
        leeway is not Leeway.PLAIN and within(leeway, Fraction(said), Fraction(true))
    )


def _said(number: Number) -> str:
    if number.in_words:
        return f"“{' '.join(number.text.split())}” ({number.value:,})"
    return f"“{number.text}”"
