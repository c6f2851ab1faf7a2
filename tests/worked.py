"""A lesson worked out from a few lines of YAML, with the site's own foods and moves."""

from __future__ import annotations

import textwrap
from pathlib import Path
from tempfile import TemporaryDirectory

from generator.compute.result import LessonResult
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.read.lesson import read_lesson
from generator.steps.filled import worked_out
from tests.project import library

__all__ = ["library", "worked"]

HEAD = "title: T\nsummary: S.\ngrades: 3-5\nminutes: 10\ngoals: [G.]\nstops:\n"


def worked(stops: str, foods: Library | None = None) -> LessonResult:
    """Work out a lesson of these stops; a mistake in them fails the test that wrote them.

    `foods` is another library than the site's own.
    """
    held = foods or library()
    with TemporaryDirectory() as folder:
        path = Path(folder) / "lessons" / "try" / "lesson.yaml"
        path.parent.mkdir(parents=True)
        path.write_text(HEAD + textwrap.indent(textwrap.dedent(stops), "  "), encoding="utf-8")
        lesson = read_lesson(Path(folder), "lessons/try/lesson.yaml", held)
    assert isinstance(lesson, Lesson), lesson
    return worked_out(lesson, held)
