"""A new lesson folder, begun from the starter file."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Collection
from pathlib import Path

from generator import carried
from generator.problems import LessonError, Place, Problem
from generator.write.whole import write_whole

STARTER = "site_data/new_lesson.yaml"


def new_lesson(root: Path, title: str, reserved: Collection[str]) -> Path:
    """Make ``lessons/<id>/lesson.yaml`` with this title; returns the file.

    A site may have a starter of its own; else the program's serves.

    Args:
        root: folder of the site.
        title: what the lesson is to be called.
        reserved: names of folders that can hold no lesson.

    Raises:
        LessonError: the title gives no folder name, or the folder is there already.
    """
    title = _spoken(title)
    name = folder_name(title)
    own = root / STARTER
    starter = own if own.is_file() else Path(carried.HOME, STARTER)
    folder = root / "lessons" / name
    if not name:
        hint = "use some of the letters a to z, or digits; the title can be changed later"
        raise _error("lessons", f"the title “{title}” holds nothing to name a folder by", hint)
    if folder.exists():
        raise _error(f"lessons/{name}", "this lesson is there already", "choose another title")
    if name in reserved:
        raise _error(f"lessons/{name}", "the site keeps this name for itself", "choose another")
    quoted = title.replace("\\", "\\\\").replace('"', '\\"')
    quoted = quoted.replace("{", "{{").replace("}", "}}")  # a brace, and no number to fill in
    text = starter.read_text("utf-8").replace("FOLDER", name).replace("TITLE", quoted)
    folder.mkdir(parents=True)
    try:
        return write_whole(folder / "lesson.yaml", text)
    except OSError:  # an empty folder would be a lesson that is there already
        folder.rmdir()
        raise


def folder_name(title: str) -> str:
    """``Soup for two!`` as ``soup-for-two``."""
    plain = unicodedata.normalize("NFKD", title).encode("ascii", "ignore").decode()
    return re.sub(r"[^a-z0-9]+", "-", plain.lower()).strip("-")[:60].rstrip("-")


def _spoken(title: str) -> str:
    """The title on one line, without signs that no file can hold."""
    plain = "".join(" " if sign.isspace() else sign for sign in title)
    return " ".join(
        "".join(sign for sign in plain if unicodedata.category(sign) not in _UNSPOKEN).split()
    )


_UNSPOKEN = {"Cc", "Cs", "Cn", "Co"}
"""Control signs, halves of a sign, and what Unicode leaves open."""


def _error(path: str, what: str, hint: str) -> LessonError:
    return LessonError([Problem(Place(path), what, hint)])
