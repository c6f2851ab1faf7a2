"""A comparison: the foods of its rows, and the names of rows and sides."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.measure import Measure
from generator.model.names import TOTAL
from generator.model.stops.compare import CompareStop
from generator.problems import Problem
from generator.read.as_written import entries, keyed, word
from generator.read.stops.items import item_problems
from generator.read.stops.kind import MadeStop, ReadKind, WrittenStop


def _references(written: WrittenStop) -> Iterator[Problem]:
    measure = next((one for one in Measure if one == word(written.data, "measure")), None)
    for number, row in enumerate(entries(written.data, "rows")):
        for side, item in enumerate(entries(keyed(row), "foods")):
            yield from item_problems(item, written, measure, "rows", number, "foods", side)


def _names(made: MadeStop[CompareStop]) -> Iterator[Problem]:
    yield from _rows(made)
    yield from _estimated(made)
    if len(set(made.ids.sides)) == 1:
        hint = "name them so that a sentence can tell them apart: sides: [Home lunch, Kiosk lunch]"
        yield Problem(made.place("sides"), "both sides have the same name", hint)


def _rows(made: MadeStop[CompareStop]) -> Iterator[Problem]:
    parts = made.ids.parts
    for number, (row, name) in enumerate(zip(made.stop.rows, parts, strict=True)):
        first = parts.index(name)
        if row.id == TOTAL:
            what = f"`{TOTAL}` is what all rows together are called"
            yield Problem(made.place("rows", number, "id"), what, "choose another id")
        elif first < number and row.id:
            what = f"the id `{name}` is taken by row {first + 1}"
            yield Problem(made.place("rows", number, "id"), what, "choose another id")
        elif first < number:
            what = f"rows {first + 1} and {number + 1} hold the same foods in the same amounts"
            hint = "take one out, or name it: {id: again, foods: [{food: …, amount: …}, {food: …, amount: …}]}"
            yield Problem(made.place("rows", number), what, hint)


def _estimated(made: MadeStop[CompareStop]) -> Iterator[Problem]:
    """The row of an estimate is one of the comparison's."""
    row = made.stop.estimate.row if made.stop.estimate else None
    if row is not None and row not in {*made.ids.parts, TOTAL}:
        hint = f"write `{TOTAL}`, or the `id:` of a row; without `row:` the first row is meant"
        yield Problem(made.place("estimate", "row"), f"there is no row `{row}` here", hint)


KIND = ReadKind(stop=CompareStop, references=_references, names=_names)
