"""The place of a letter of a text: in its file, whatever way it is written there, or in its cue."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Iterator, Sequence
from functools import cache

from generator.model.captions import Cue, clock_ms
from generator.model.places import Path, Places
from generator.problems import Place

Spot = Callable[[int], tuple[Place, str]]
"""The place of a letter of a text, and its time in the video as ``at 1:05, ``, if it has one."""

_WRITTEN_ONLY = "'\\\""
"""Signs that may stand in a file for the sake of its syntax: a quote doubled, a backslash."""


def spot_in_file(places: Places, path: Path, text: str) -> Spot:
    """Where a letter of a value stands in its YAML file, in a block or quotes too.

    Args:
        places: of the file.
        path: of the value.
        text: the value.
    """

    @cache
    def aligned() -> dict[int, tuple[int, int]]:
        return dict(_aligned(places.at(*path), places.lines, text))

    def spot(offset: int) -> tuple[Place, str]:
        place = places.at(*path)
        if found := aligned().get(offset):
            return Place(place.path, found[0] + 1, found[1] + 1), ""
        return place, ""

    return spot


def spot_in_cues(cues: Sequence[Cue]) -> Spot:
    """Where a letter stands of the words of some cues, put together with a space between two."""
    starts: list[int] = []
    at = 0
    for cue in cues:
        starts.append(at)
        at += len(cue.text) + 1

    def spot(offset: int) -> tuple[Place, str]:
        number = max(0, bisect_right(starts, offset) - 1)
        cue, inside = cues[number], offset - starts[number]
        line = 0
        while line < len(cue.lines) - 1 and inside > len(cue.lines[line]):
            inside -= len(cue.lines[line]) + 1
            line += 1
        place = Place(cue.place.path, cue.place.line + 1 + line, max(0, inside) + 1)
        return place, f"at {clock_ms(cue.start_ms)}, "

    return spot


def _aligned(
    place: Place, lines: Sequence[str], text: str
) -> Iterator[tuple[int, tuple[int, int]]]:
    """Each letter with its line and column, from 0, by going along text and file until they part."""
    line, column = place.line - 1, place.column - 1
    if line >= len(lines):
        return
    if lines[line][column : column + 1] in {"|", ">"}:
        line, column = line + 1, 0
    for at, letter in enumerate(text):
        if letter.isspace():
            continue
        found = _next(lines, line, column, letter)
        if found is None:
            return
        line, column = found
        yield at, found
        column += 1


def _next(lines: Sequence[str], line: int, column: int, letter: str) -> tuple[int, int] | None:
    """Where a letter comes next, past space and what only the syntax wants."""
    while line < len(lines):
        while column < len(lines[line]):
            here = lines[line][column]
            if here == letter:
                return line, column
            if not (here.isspace() or here in _WRITTEN_ONLY):
                return None
            column += 1
        line, column = line + 1, 0
    return None
