"""Which food a number is said of."""

from __future__ import annotations

from collections.abc import Sequence

from generator.check.claims.mentions import Finder, Mention, Seat
from generator.check.held_texts import Said
from generator.check.rows import rows_called
from generator.compute.result import Comparison
from generator.language import Language
from generator.language.number import Number

Seats = frozenset[Seat]
"""Rows and sides, counted from 0; nothing where no food is named."""


class Follower:
    """Goes through the sentences of one stop and remembers the food last spoken of."""

    def __init__(self, comparison: Comparison, language: Language) -> None:
        self._comparison, self._language = comparison, language
        self._finder = Finder(comparison, language)
        self._before: list[Said] = []
        """Sentences that were not looked at yet, because no number asked for it."""
        self._last: Seats = frozenset()
        """The foods spoken of before these, as far as anything goes on about them."""

    def whose(self, said: Said, numbers: Sequence[Number]) -> tuple[Seats, ...]:
        """For each number of a sentence the foods it can be said of.

        A number belongs to the foods named since the number before it: *the apple holds 90, the pie
        410*. Where the first food comes after the first number it is the other way round: *90 for
        the apple and 410 for the pie*. As many numbers behind as many foods are in the same order:
        *the apple and the pie: 90 and 410*. A sentence that names none and begins with *it* goes on
        about the last food.
        """
        self._before.append(said)
        if not numbers:
            return ()
        named = self._finder.mentions(said.text)
        if not named:
            return tuple([self._carried_on()] * len(numbers))
        begins = [number.start for number in numbers]
        foods = [one for one in named if one.seats]
        if 1 < len(foods) == len(begins) and foods[-1].start < begins[0]:
            return tuple(self._seats([one], said) for one in foods)
        ahead = bool(begins) and named[0].start > begins[0]
        found = []
        for at, begin in enumerate(begins):
            low, high = (
                (begin, begins[at + 1 : at + 2])
                if ahead
                else ((begins[at - 1] if at else 0), [begin])
            )
            end = high[0] if high else len(said.text)
            here = [one for one in named if low <= one.start < end]
            found.append(self._seats(self._first(here) if ahead else here, said))
        return tuple(found)

    def _first(self, named: Sequence[Mention]) -> Sequence[Mention]:
        """The words of the first food: *90 for the apple, against the pie*."""
        seats: Seats = frozenset()
        for at, one in enumerate(named):
            theirs = one.seats or self._side(one.side)
            if seats and not seats & theirs:
                return named[:at]
            seats = (seats & theirs) or theirs
        return named

    def _carried_on(self) -> Seats:
        """The foods of the last sentence that names any, as long as all after it go on about them."""
        for said in reversed(self._before):
            if named := self._finder.mentions(said.text):
                self._last = self._seats(named, said)
                break
            if not self._language.around.carries_on.search(said.text):
                self._last = frozenset()
                break
        self._before.clear()
        return self._last

    def named(self, said: Said) -> Seats:
        """The foods a whole sentence speaks of."""
        return self._seats(self._finder.mentions(said.text), said)

    def _seats(self, named: Sequence[Mention], said: Said) -> Seats:
        """What all the words have in common; a word that fits none of them begins anew."""
        if not named:
            return frozenset()
        seats: Seats = frozenset()
        foods = False
        for one in named:
            theirs = one.seats or self._side(one.side)
            seats = (seats & theirs) or theirs
            foods = foods or bool(one.seats)
        in_rows = self._in_rows(
            seats, said.rows if foods else rows_called(said.text, self._language.claims)
        )
        if not foods and not in_rows:
            return frozenset()  # a side alone may mean any of its foods, or all of them
        return in_rows or seats

    def _in_rows(self, seats: Seats, called: frozenset[int]) -> Seats:
        rows = len(self._comparison.rows)
        meant = {row % rows for row in called if row < rows}
        return frozenset(seat for seat in seats if seat[0] in meant)

    def _side(self, side: int | None) -> Seats:
        return frozenset(
            (row, side) for row in range(len(self._comparison.rows)) if side is not None
        )
