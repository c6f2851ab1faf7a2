"""What the top of a lesson file says, read without its stops: enough to set lessons in order and to name one."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from generator.model.grades import Grades, parse_grades
from generator.read.files import LARGEST_LESSON, read_text
from generator.read.source import Data, read_source

_STOPS = re.compile(r"^stops:", re.MULTILINE)
_BRACE = re.compile(r"\{\{|\}\}|\{([^{}\n]{0,200})\}")
"""A brace that is meant as one, or what a number of the lesson is filled in for."""
_NUMBER = re.compile(r"\d[\d,.]*")
"""A number that is meant, and stays as it is."""
_KEYS = ("title", "arithmetic", "grades", "order", "formerly")


@dataclass(frozen=True, slots=True)
class LessonHead:
    """The top of one file: of a lesson, or of one of its translations."""

    title: str
    """What it is called."""
    arithmetic: str
    """What a child must be able to do; empty where the file does not say so."""
    grades: Grades | None
    """Nothing in a translation."""
    order: int | None
    """Its place in the lists, where somebody chose one."""


def head_text(root: Path, path: str) -> str:
    """The top of a lesson file or translation as one line; empty where it cannot be read.

    What is wrong with the file is told by whoever reads it whole.

    Args:
        root: folder of the site.
        path: the file below it.
    """
    text = read_text(root, path, LARGEST_LESSON)
    if not isinstance(text, str):
        return ""
    data = _top(path, text)
    return json.dumps({key: data[key] for key in _KEYS if key in data}) if data else ""


def head_from(text: str) -> LessonHead | None:
    """A head as ``head_text`` gave it; nothing where the file names no title that can stand elsewhere."""
    told = json.loads(text) if text else {}
    title = _shown(told.get("title"))
    order = told.get("order")
    return (
        LessonHead(
            title,
            _shown(told.get("arithmetic")),
            _grades(told.get("grades")),
            order if isinstance(order, int) else None,
        )
        if title
        else None
    )


def former_names_from(text: str) -> tuple[str, ...]:
    """Names that the folder of a lesson had before, in a head as ``head_text`` gave it."""
    listed = json.loads(text).get("formerly") if text else None
    return (
        tuple(name for name in listed if isinstance(name, str)) if isinstance(listed, list) else ()
    )


def _top(path: str, text: str) -> Mapping[str, Data] | None:
    """What stands above the stops, or in the whole file where the title stands below them."""
    stops = _STOPS.search(text)
    for part in (text[: stops.start()] if stops else text, text):
        data = read_source(path, part).data
        if isinstance(data, dict) and "title" in data:
            return data
    return None


def _shown(written: object) -> str:
    """A text as its lesson shows it; empty where it takes a number, which only the whole lesson has."""
    if not isinstance(written, str):
        return ""
    inside = [found[1] for found in _BRACE.finditer(written) if found[1] is not None]
    if not all(map(_NUMBER.fullmatch, inside)):
        return ""
    return _BRACE.sub(lambda found: found[0][0] if found[1] is None else found[1], written).strip()


def _grades(written: object) -> Grades | None:
    try:
        return parse_grades(written)
    except ValueError:
        return None
