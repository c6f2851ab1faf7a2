"""The lesson file's reference page and its JSON Schema, written where the site keeps them."""

from __future__ import annotations

from pathlib import Path

from generator.author.reference import reference_page
from generator.author.schema import lesson_schema
from generator.read.library import read_library
from generator.write.whole import write_whole

SCHEMA = "site_data/lesson.schema.json"


def write_reference(root: Path) -> tuple[Path, ...]:
    """Write the lesson file's JSON Schema and its reference page; returns both files.

    Raises:
        LessonError: the library must be put right.
    """
    page = root / "lessons/guide/lesson-file.md"
    page.parent.mkdir(parents=True, exist_ok=True)
    write_whole(page, reference_page())
    return write_schema(root), page


def write_schema(root: Path) -> Path:
    """Write the JSON Schema alone, with the foods and moves of the site; returns the file.

    Raises:
        LessonError: as above.
    """
    library = read_library(root)
    file = root / SCHEMA
    file.parent.mkdir(parents=True, exist_ok=True)
    write_whole(file, lesson_schema(library.eatable, library.moves))
    return file


def renew_schema(root: Path) -> None:
    """Write it anew where the site has one, after a food was added."""
    if (root / SCHEMA).is_file():
        write_schema(root)
