"""Foods of a what-if stop's changes: what a number is held against that is said of one of them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from generator.check.claims.mentions import Finder, Seat, held_at, stems
from generator.compute.changed import WhatIf
from generator.compute.result import Comparison, LessonResult, Row
from generator.language import Language


@dataclass(frozen=True, slots=True)
class Brought:
    """The foods of one what-if stop, before and after its changes."""

    comparison: Comparison
    """The one that is changed, with a row behind its own for each food that a change brings."""
    finder: Finder
    """Of all these foods."""
    first: int
    """The first row that a change brings, from 0."""
    language: Language
    """Of the text that speaks of them."""

    def seats(self, said: str) -> frozenset[Seat]:
        """The food that is said to hold a number, where it is that food alone: *a cup of barley*.

        Args:
            said: what stands before *holds*. It must end in the food: *the pot with barley* holds
                what is in the pot, and so does *with barley the pot*.
        """
        named = self.finder.mentions(said)
        if not named or not named[-1].seats:
            return frozenset()
        last = named[-1]
        if self.language.said_of.part_of_more.search(said[: last.start]):
            return frozenset()
        own = {
            stem
            for seat in last.seats
            for stem in stems(held_at(self.comparison, seat).name(self.language.tag).words)
        }
        return last.seats if own.issuperset(stems(said[last.start :])) else frozenset()

    def brings(self, seats: frozenset[Seat]) -> bool:
        """Whether a food stands nowhere but in a change."""
        return bool(seats) and all(row >= self.first for row, _ in seats)


def brought(
    result: LessonResult, index: int, comparison: Comparison | None, language: Language
) -> Iterator[Brought]:
    """The changes that a text can speak of: those of its own stop, and earlier ones of its comparison.

    Args:
        result: the lesson with its numbers.
        index: of the text's stop, from 0.
        comparison: the one that the text tells of; none at a what-if stop.
        language: of the text.
    """
    for at, ids in enumerate(result.lesson.ids[: index + 1]):
        what_if = result.worked.get(ids.stop)
        if not isinstance(what_if, WhatIf):
            continue
        if at == index or what_if.comparison is comparison:
            rows = what_if.comparison.rows
            wide = replace(what_if.comparison, rows=(*rows, *_rows(what_if)))
            yield Brought(wide, Finder(wide, language), len(rows), language)


def _rows(what_if: WhatIf) -> Iterator[Row]:
    for change in what_if.changes:
        for held in change.new:
            yield Row(change.id, (held, held), change.gap)
