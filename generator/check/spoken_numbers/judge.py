"""Whether a number that is said is one that the lesson computes, of what it is said of."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from generator.check.claims.mentions import Seat, held_at
from generator.check.claims.read import claims_of
from generator.check.held_texts import Said
from generator.check.spoken_numbers.amount import Amount
from generator.check.spoken_numbers.brought import Brought
from generator.check.spoken_numbers.let_through import Passing
from generator.check.spoken_numbers.meant import Beside, Meant
from generator.check.spoken_numbers.near import belongs_to, called_in, shown
from generator.check.spoken_numbers.strangers import stranger
from generator.compute.figure import Figure
from generator.compute.result import Comparison, LessonResult
from generator.language import Language
from generator.language.form import Form
from generator.language.number import Number


@dataclass(frozen=True, slots=True)
class Fault:
    """Something wrong with a number."""

    offset: int
    """Where in its text."""
    seats: frozenset[Seat]
    """The food it is about, if any."""
    what: str
    """A sentence without a full stop."""
    hint: str
    """A way out, the same."""


@dataclass(frozen=True, slots=True)
class Judge:
    """Judges the numbers of one text."""

    result: LessonResult
    """The lesson with its numbers."""
    computed: tuple[Figure, ...]
    """What may be told of."""
    meant: Meant
    """Which of them a number can be."""
    passing: Passing
    """Lets others pass."""
    comparison: Comparison | None
    """The one that is told of, if any."""
    changed: tuple[Brought, ...]
    """What changes bring that may be told of."""
    language: Language
    """In which the numbers are said."""

    def fault(
        self, said: Said, number: Number, seats: frozenset[Seat], near: Beside, *, ahead: bool
    ) -> Fault | None:
        """What is wrong with a number that is said of some foods, or of none."""
        amount = Amount.of(number, near, self.language)
        offset = said.start + number.start
        if number.nothing and not self._none_of_it(said, number, seats):
            return None  # there may be none of something else
        if not number.nothing and self.language.claims.supposed.search(near.head):
            return None
        changed = self._brought(near)
        if not changed and (strange := self._stranger(amount, seats, near)):
            return Fault(offset, seats, *strange)
        comparison, foods = changed or (self.comparison, seats)
        if comparison and foods and (number.measure or self._held(said, number)):
            if self._of_several(said, number, foods, comparison):
                return None
            wrong = self._of_food(amount, foods, comparison)
            return Fault(offset, seats, *wrong) if wrong else None
        meant = self.meant.narrowed(said, near, seats, ahead=ahead)
        if any(amount.agrees(figure) for figure in meant):
            return None
        if (
            self.passing.repeats(number, near)
            or self.passing.offered(number, said.text)
            or (meant == self.computed and self.passing.passes(number, near))
        ):
            return None
        if self.language.claims.gap.search(said.text) and self._of_a_gap(said, number):
            return None
        return Fault(offset, seats, *self._of_figures(amount, meant))

    def _of_a_gap(self, said: Said, number: Number) -> bool:
        """Whether it is the gap of two figures said with it, or one that the check of claims asks about."""
        known = {figure.value for figure in self.computed}
        others = {one.value for one in self.language.numbers_in(said.text) if one != number} & known
        gaps = {one - other for one in others for other in others}
        return number.value in gaps or any(
            claim.form is Form.GAP and claim.start <= number.start < claim.end
            for claim in claims_of(said.text, self.language.claims)
        )

    def _stranger(
        self, amount: Amount, seats: frozenset[Seat], near: Beside
    ) -> tuple[str, str] | None:
        """A food that is said to hold the number, and is not in the lesson."""
        found = self.language.said_of.food_before.search(near.before) if self.comparison else None
        word = found and stranger(self.result, found["food"], self.language, alone=not seats)
        if not word:
            return None
        what = f"{amount.quoted} is said of “{word}”, which is no food of this lesson"
        return what, f"name the food as the lesson does, or {self.passing.mark(amount.number)}"

    def _brought(self, near: Beside) -> tuple[Comparison, frozenset[Seat]] | None:
        """A food that a change brings, or at its own stop any food of it, where the number is its own."""
        found = self.language.said_of.food_before.search(near.before)
        if not found:
            return None
        for one in self.changed:
            seats = one.seats(found["food"])
            if one.brings(seats) or (seats and not self.comparison):
                return one.comparison, seats
        return None

    def _of_several(
        self, said: Said, number: Number, seats: frozenset[Seat], comparison: Comparison
    ) -> bool:
        """Whether it is what several portions hold: *two cups hold ten grams*."""
        portions = {one.value for one in self.language.numbers_in(said.text) if one != number}
        values = [held_at(comparison, seat).shown.value for seat in seats]
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
        self, amount: Amount, seats: frozenset[Seat], comparison: Comparison
    ) -> tuple[str, str] | None:
        foods = [held_at(comparison, seat) for seat in sorted(seats)]
        values = [held.shown.value for held in foods]
        measure = comparison.stop.measure
        if any(amount.is_value(value, measure.unit, measure) for value in values):
            return None
        language = self.language.tag
        names = " or ".join(dict.fromkeys(held.name(language).words for held in foods))
        true = " or ".join(dict.fromkeys(f"{value:,}" for value in values))
        unlike = bool(amount.unit) and amount.unit is not measure.unit
        said = amount.quoted_whole if unlike or amount.spoons else amount.quoted
        what = f"{said} is said of “{names}”, which holds {true} {measure.unit}"
        other = next((f for f in self.computed if amount.agrees(f)), None)
        belongs = f"; {amount.value:,} is {belongs_to(other, self.result)}" if other else ""
        return what, f"say {true}, or correct the amount of the food{belongs}"

    def _of_figures(self, amount: Amount, meant: tuple[Figure, ...]) -> tuple[str, str]:
        other = next((f for f in self.computed if amount.agrees(f)), None)
        nearest = _nearest(amount.value, meant)
        is_nearest = f"the nearest is {shown(nearest)}, {called_in(nearest, self.result)}"
        if len(meant) == 1:
            of = f"{called_in(nearest, self.result)}, which is {shown(nearest)}"
            belongs = f"; {amount.value:,} is {belongs_to(other, self.result)}" if other else ""
            return f"{amount.quoted} is said of {of}", f"say {nearest.value:,}{belongs}"
        if other:
            belongs = f"{amount.value:,} is {belongs_to(other, self.result)}"
            return f"{amount.quoted} is said of something else here", f"{is_nearest}; {belongs}"
        if in_another := next((f for f in meant if f.value == amount.value), None):
            what = f"{amount.quoted_whole} is given in another unit than the lesson has"
            return what, f"say {shown(in_another)}"
        hint = f"{is_nearest}; or {self.passing.mark(amount.number)}"
        return f"{amount.quoted} is no number of the lesson here", hint


def _nearest(value: Decimal, figures: Iterable[Figure]) -> Figure:
    return min(figures, key=lambda figure: abs(figure.value - value))
