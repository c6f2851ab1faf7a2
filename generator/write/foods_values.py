"""Values of ``site_data/foods.yaml`` changed and added where they stand, the rest byte for byte."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from generator.problems import LessonError, Place, Problem
from generator.write.foods_file import FOODS


@dataclass(frozen=True, slots=True)
class Edit:
    """One value of the file to be written differently."""

    line: int
    """Counted from 1."""
    column: int
    """Counted from 1."""
    old: str
    """What stands there, without quotes."""
    new: str
    """What is to stand there."""


@dataclass(frozen=True, slots=True)
class Addition:
    """Keys to be written behind the last value of a mapping."""

    line: int
    """Of that value, counted from 1."""
    column: int
    """Counted from 1."""
    last: str
    """The value, without quotes."""
    values: Mapping[str, str]
    """What is to be added."""
    opening: tuple[int, int]
    """Line and column where the mapping begins; in braces, there stands one."""


def with_values(text: str, edits: Iterable[Edit], additions: Iterable[Addition] = ()) -> str:
    """The text with some of its values changed, and some added.

    Raises:
        LessonError: a value is not written where it was read.
    """
    lines = text.split("\n")
    # From the end, so that no place moves; behind a value is added before the value itself changes.
    changes: list[Edit | Addition] = [*edits, *additions]
    for change in sorted(changes, key=_from_the_end, reverse=True):
        number, at = change.line - 1, change.column - 1
        line = lines[number]
        stands = change.old if isinstance(change, Edit) else change.last
        old = next((form for form in _forms(stands) if line.startswith(form, at)), None)
        if old is None:
            raise LessonError([_elsewhere(change, stands)])
        end = at + len(old)
        if isinstance(change, Edit):
            lines[number] = line[:at] + _written(change.new) + line[end:]
        else:
            lines[number] = _added(change, lines, line, end)
    return "\n".join(lines)


def _from_the_end(change: Edit | Addition) -> tuple[int, int, bool]:
    return change.line, change.column, isinstance(change, Addition)


def _added(addition: Addition, lines: Sequence[str], line: str, end: int) -> str:
    """The line with the keys after the value, or in lines of their own where that one has its own."""
    row, column = addition.opening
    written = [f"{key}: {_written(value)}" for key, value in addition.values.items()]
    if lines[row - 1].startswith("{", column - 1):
        return line[:end] + "".join(f", {one}" for one in written) + line[end:]
    indent = line[: len(line) - len(line.lstrip())]
    return line + "".join(f"\n{indent}{one}" for one in written)


def _elsewhere(change: Edit | Addition, stands: str) -> Problem:
    place = Place(FOODS, change.line, change.column)
    if isinstance(change, Edit):
        return Problem(place, f"`{stands}` cannot be changed here", f"write {change.new} by hand")
    by_hand = ", ".join(f"{key}: {value}" for key, value in change.values.items())
    return Problem(place, f"nothing can be added behind `{stands}` here", f"write {by_hand}")


def _written(value: str) -> str:
    """A figure as it is; anything with signs of YAML's own in quotes."""
    return value if re.fullmatch(r"[\w. ]+", value) else json.dumps(value, ensure_ascii=False)


def _forms(value: str) -> tuple[str, ...]:
    return (json.dumps(value, ensure_ascii=False), f"'{value}'", value)
