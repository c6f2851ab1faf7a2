"""A day: its foods and their names."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.measure import Measure
from generator.model.stops.day import DayStop
from generator.problems import Problem
from generator.read.as_written import entries
from generator.read.stops.items import item_problems
from generator.read.stops.kind import MadeStop, ReadKind, WrittenStop


def _references(written: WrittenStop) -> Iterator[Problem]:
    for number, item in enumerate(entries(written.data, "ate")):
        yield from item_problems(item, written, Measure.ENERGY, "ate", number)


def _names(made: MadeStop[DayStop]) -> Iterator[Problem]:
    parts = made.ids.parts
    for number, name in enumerate(parts):
        if parts.index(name) < number:
            what = f"foods {parts.index(name) + 1} and {number + 1} of this day are the same, of the same amount and meal"
            hint = "write them once with the whole amount, such as `2 cups`, or say with `when:` at which meal each was"
            yield Problem(made.place("ate", number), what, hint)


KIND = ReadKind(stop=DayStop, references=_references, names=_names)
