"""The record of publications: lines of JSON, put side by side by git where two people published."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from typing import TypeVar

from pydantic import ValidationError
from pydantic_core import from_json

from generator.model.published import (
    PUBLISHED,
    SITE_RECORD,
    LessonState,
    Publication,
    Published,
    lesson_record,
)
from generator.problems import LessonError, Place, Problem
from generator.read.files import read_text
from generator.read.published_lines import (
    NumbersLine,
    StateLine,
    as_numbers,
    as_publication,
    as_state,
)

LARGEST_RECORD = 50_000_000
"""Bytes; a lesson whose numbers change every week of thirty years has a fiftieth of it."""
_WAY_OUT = (
    "take the line as it was from the last commit, or take it out: nobody writes here by hand"
)
T = TypeVar("T")


def read_published(root: Path) -> Published:
    """The whole record of a site; an empty one where nothing was published yet.

    Args:
        root: folder of the site; what the program brings along is not looked at.

    Raises:
        LessonError: with every line that cannot be read.
    """
    problems: list[Problem] = []
    lessons: dict[str, tuple[LessonState, ...]] = {}
    for file in sorted((root / PUBLISHED / "lessons").glob("*.jsonl")):
        try:
            lessons[file.stem] = read_lesson_record(root, file.stem)
        except LessonError as error:
            problems += error.problems
    publications = _publications(root, problems)
    if problems:
        raise LessonError(problems)
    return Published(lessons, publications)


def read_lesson_record(root: Path, lesson: str) -> tuple[LessonState, ...]:
    """What was published of a lesson, the oldest first; nothing where it never went out.

    Args:
        root: folder of the site.
        lesson: its id.

    Raises:
        LessonError: with every line that cannot be read.
    """
    path, problems = lesson_record(lesson), list[Problem]()
    numbers: dict[tuple[str, str], NumbersLine] = {}
    found: list[tuple[Place, StateLine]] = []
    for place, told in _lines(root, path, problems):
        if "are" in told:
            if line := _read(as_numbers, place, told, problems):
                numbers[line.language, line.numbers] = line
        elif state := _read(as_state, place, told, problems):
            found.append((place, state))
    states = [one for place, line in found for one in _whole(place, line, numbers, problems)]
    if problems:
        raise LessonError(problems)
    return tuple(sorted(states, key=lambda one: (one.at, one.language)))


def _whole(
    place: Place,
    line: StateLine,
    numbers: Mapping[tuple[str, str], NumbersLine],
    problems: list[Problem],
) -> Iterator[LessonState]:
    """A state with its numbers, which stand in a line of their own."""
    held = numbers.get((line.language, line.numbers))
    if held is None and not line.gone:
        what = f"this line has the numbers `{line.numbers}`, and no line says what they are"
        problems.append(Problem(place, what, _WAY_OUT))
        return
    yield line.with_numbers(held.are if held else {})


def _publications(root: Path, problems: list[Problem]) -> tuple[Publication, ...]:
    found = [
        one
        for place, told in _lines(root, SITE_RECORD, problems)
        if (one := _read(as_publication, place, told, problems))
    ]
    return tuple(sorted(found, key=lambda one: one.at))


def _lines(
    root: Path, path: str, problems: list[Problem]
) -> Iterator[tuple[Place, dict[str, object]]]:
    """Each line that is JSON, with its place; equal ones once, as two branches both have them."""
    if not (root / path).exists():
        return
    text = read_text(root, path, LARGEST_RECORD)
    if isinstance(text, Problem):
        problems.append(text)
        return
    seen: set[str] = set()
    for number, line in enumerate(text.splitlines(), start=1):
        if not line.strip() or line in seen:
            continue
        seen.add(line)
        told = _object(line)
        if told is None:
            problems.append(_broken(Place(path, number), line))
        else:
            yield Place(path, number), told


def _object(line: str) -> dict[str, object] | None:
    try:
        told = from_json(line, allow_inf_nan=False)
    except ValueError:
        return None
    return told if isinstance(told, dict) else None


def _broken(place: Place, line: str) -> Problem:
    if line.startswith(("<<<<<<<", "=======", ">>>>>>>")):
        what = "git left the mark of an unfinished merge in the record of publications"
        return Problem(place, what, "take this line out and keep all others, of both sides")
    return Problem(place, "this line of the record of publications is not whole", _WAY_OUT)


def _read(
    read: Callable[[dict[str, object]], T],
    place: Place,
    told: dict[str, object],
    problems: list[Problem],
) -> T | None:
    """What a line says, where it can be read."""
    try:
        return read(told)
    except ValidationError as error:
        problems.append(_problem(place, error))
        return None


def _problem(place: Place, error: ValidationError) -> Problem:
    first = error.errors(include_url=False)[0]
    key = ".".join(map(str, first["loc"]))
    if first["type"] == "unexpected_keyword_argument":
        what = f"this line of the record holds `{key}`, which this program does not know"
        return Problem(place, what, "a newer program wrote it: update this one")
    what = f"this line of the record of publications cannot be read at `{key}`"
    return Problem(place, what, _WAY_OUT)
