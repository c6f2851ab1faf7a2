"""A new lesson folder, begun from the starter file."""

from __future__ import annotations

import re
import unicodedata
from pathlib import Path

from generator.problems import LessonError, Place, Problem

STARTER = "site_data/new_lesson.yaml"


def new_lesson(root: Path, title: str) -> Path:
    """Make ``lessons/<id>/lesson.yaml`` with this title; returns the file.

    Raises:
        LessonError: the title gives no folder name, the folder is there already, or the starter is gone.
    """
    name = folder_name(title)
    starter, folder = root / STARTER, root / "lessons" / name
    if not name:
        raise LessonError(
            [
                Problem(
                    Place("lessons"),
                    f"the title “{title}” holds no letter to name a folder by",
                    "use some letters",
                )
            ]
        )
    if folder.exists():
        raise LessonError(
            [
                Problem(
                    Place(f"lessons/{name}"), "this lesson is there already", "choose another title"
                )
            ]
        )
    if not starter.is_file():
        raise LessonError(
            [Problem(Place(STARTER), "this file is missing", "take it from the last commit")]
        )
    text = starter.read_text("utf-8").replace(
        "TITLE", title.replace("\\", "\\\\").replace('"', '\\"')
    )
    folder.mkdir(parents=True)
    file = folder / "lesson.yaml"
    file.write_text(text, "utf-8")
    return file


def folder_name(title: str) -> str:
    """``Soup for two!`` as ``soup-for-two``."""
    plain = unicodedata.normalize("NFKD", title).encode("ascii", "ignore").decode()
    return re.sub(r"[^a-z0-9]+", "-", plain.lower()).strip("-")[:60]
