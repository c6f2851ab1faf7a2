"""A move stop: its moves, and the comparison that they count."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.stops.move import REST, MoveStop
from generator.problems import Problem
from generator.read.as_written import entries, word
from generator.read.explain import did_you_mean
from generator.read.meant import moves_like
from generator.read.source import Data
from generator.read.stops.kind import ReadKind, WrittenStop, nothing


def _references(written: WrittenStop) -> Iterator[Problem]:
    moves = entries(written.data, "moves")
    yield from _unknown(moves, written)
    target = word(written.data, "for")
    if target is None:
        return
    compares = {
        name: stop.data
        for stop in written.stops.values()
        if stop.kind == "compare" and (name := word(stop.data, "id")) is not None
    }
    if target not in compares:
        near = did_you_mean(target, list(compares))
        hint = near if compares else "add a `compare` stop with this id"
        what = f"no compare stop has the id `{target}`"
        yield Problem(written.place("for"), what, hint)
        return
    rows = entries(compares[target], "rows")
    if rows and moves and len(rows) != len(moves):
        what = f"{_counted(len(moves), 'move')} for {_counted(len(rows), 'row')} of `{target}`"
        hint = "give one move for each row, in the same order"
        yield Problem(written.place("moves"), what, hint)


def _unknown(moves: list[Data], written: WrittenStop) -> Iterator[Problem]:
    known = written.library.moves
    for number, name in enumerate(moves):
        if isinstance(name, str) and name != REST and name not in known:
            what = f"there is no move `{name}` in site_data/moves.yaml"
            yield Problem(written.place("moves", number), what, moves_like(name, known))


def _counted(number: int, word: str) -> str:
    return f"{number} {word}{'s' if number != 1 else ''}"


KIND = ReadKind(stop=MoveStop, references=_references, names=nothing)
