"""Lessons that nobody would see, for their file has another name or lies in another place than a lesson's."""

from __future__ import annotations

import os
from collections.abc import Collection, Iterator
from pathlib import Path

from generator.problems import Place, Problem, Weight
from generator.read.draft import draft_place
from generator.read.files import LARGEST_LESSON, read_text

LESSON = "lesson.yaml"
_GUIDE = "guide"
_MEANT = {
    *("lesson.yml", "lesson.yaml.txt", "lesson.yml.txt", "lesson.txt", "lesson"),
    *("lesson.yaml.yaml", "lesson.yaml.yml", "lesson.yml.yaml", "lesson.json", "lesson.yaml.rtf"),
}
"""How ``lesson.yaml`` is called by a machine or a hand that means well."""
_OF_LESSONS = (".yaml", ".yml", ".mp4")
_OWN_FOLDER = "put its folder into lessons/ itself, or out of lessons/ if it is kept for later"


def unseen_lessons(root: Path, languages: Collection[str]) -> Iterator[Problem]:
    """What looks like a lesson and is none; a must where a lesson would be lost without a word.

    Args:
        root: folder of the site.
        languages: of the site; their folders hold pages.
    """
    closed: list[OSError] = []
    for name, folders, files in os.walk(root / "lessons", onerror=closed.append):
        here = Path(name).relative_to(root / "lessons")
        folders[:] = sorted(
            one for one in folders if not one.startswith(".") and Path(here, one) != Path(_GUIDE)
        )
        yield from _in_folder(root, here, sorted(files), languages)
    for error in closed:
        what = f"this folder cannot be opened ({error.strerror})"
        path = Path(os.fsdecode(error.filename)).relative_to(root).as_posix()
        yield Problem(Place(path), what, "ask whose it is; what is in it would be left out")


def _in_folder(
    root: Path, here: Path, files: list[str], languages: Collection[str]
) -> Iterator[Problem]:
    """What is to be said of one folder; ``here`` is its path below ``lessons/``."""
    if len(here.parts) == 1 and LESSON in files:
        return
    found = next((name for name in files if _is_lesson(root, here, name)), None)
    if not found:
        yield from _beside_no_lesson(here, files)
        return
    path = (Path("lessons") / here / found).as_posix()
    if not here.parts:
        what, hint = "a lesson has a folder of its own", f"put this into lessons/NAME/{LESSON}"
    elif len(here.parts) == 1:
        what = f"this folder is no lesson, for its file is called `{found}`"
        hint = f"call it `{LESSON}`"
    else:
        what, hint = f"the lesson in `{here.as_posix()}` is not seen", _OWN_FOLDER
        if here.parts[0] in languages:
            other = f"lesson.{here.parts[0]}.yaml"
            hint = f"put its folder into lessons/ itself; a translation is the file {other} there"
    yield Problem(Place(path), what, hint, _weight(root, here, path))


def _weight(root: Path, here: Path, path: str) -> Weight:
    """A question where it may be a copy or is held back; a must where a lesson would be lost."""
    copy = len(here.parts) > 1 and (root / "lessons" / here.parts[0] / LESSON).is_file()
    return Weight.QUESTION if copy or draft_place(root, path) else Weight.MUST


def _is_lesson(root: Path, here: Path, name: str) -> bool:
    """Whether a file is called like a lesson's, or holds stops as a lesson's does."""
    plain = name.lower().replace(" ", "")
    if name == LESSON or plain in _MEANT or plain == LESSON:
        return True
    if not plain.endswith((".yaml", ".yml")) or _is_beside(plain):
        return False
    text = read_text(root, (Path("lessons") / here / name).as_posix(), LARGEST_LESSON)
    return isinstance(text, str) and "\nstops:" in f"\n{text}" and "\ntitle:" in f"\n{text}"


def _is_beside(name: str) -> bool:
    """Whether a file is one that lies beside a lesson's."""
    return name in {"recorded.yaml", "reviewed.yaml"} or (
        name.startswith("lesson.") and name.count(".") == 2
    )


def _beside_no_lesson(here: Path, files: list[str]) -> Iterator[Problem]:
    """A folder with what belongs to lessons, and no lesson."""
    if len(here.parts) != 1:
        return
    if name := next((one for one in files if one.lower().endswith(_OF_LESSONS)), None):
        what = f"this folder holds `{name}` and no {LESSON}, so it is no lesson"
        hint = f"put a {LESSON} into it, or the file into the folder of its lesson"
        yield Problem(Place(f"lessons/{here.as_posix()}"), what, hint, Weight.QUESTION)
