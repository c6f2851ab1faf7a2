"""The files that an educator writes, and how far each is taken when it is read."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from generator.author.reviewed import keep_review
from generator.making import Surroundings, make_lesson
from generator.model.library import Library
from generator.plugin.settings import load_settings
from generator.plugin.survey import survey
from generator.problems import Problem
from generator.read.library import read_library
from generator.steps.checking import check_lessons
from generator.steps.surroundings import surroundings
from generator.steps.work import work_lesson
from tests.site_project import copy_project

LESSONS = ("river-walk", "soup-night", "two-days", "garden-baskets")
"""Of every kind of stop, with translations and a record of what was filmed; one is read by somebody in a kitchen."""
Read = Callable[["Kitchen", bool], Iterable[Problem]]


@dataclass(frozen=True, slots=True)
class Target:
    """A file to change."""

    name: str
    """What kind of file it is."""
    path: str
    """Below the root."""
    read: Read
    """Reads it; asked to go further for a few, it makes pages of what was read."""
    share: int
    """How many of a hundred changed files are of this one."""


class Kitchen:
    """A small site of a process's own, in which one file at a time is changed."""

    def __init__(self, root: Path) -> None:
        """Copy four lessons of the demo, with the foods and moves that they name and no others."""
        self.root = copy_project(root)
        for lesson in (self.root / "lessons").glob("*/lesson.yaml"):
            if lesson.parent.name not in LESSONS:
                shutil.rmtree(lesson.parent)
            else:
                _give_older_name(lesson)
        with (self.root / "site_data/site.yaml").open("a", encoding="utf-8") as site:
            site.write("formerly: {recipes.html: care.html, old-picnic: }\n")
        _shorten(self.root / "site_data/foods.yaml", "foods", self.root)
        _shorten(self.root / "site_data/moves.yaml", "moves", self.root)
        keep_review(self.root, "river-walk", {"": "registered dietitian"}, "2026-03-14", ())
        self.library: Library = read_library(self.root)
        self.around: Surroundings = surroundings(self.root, self.library, preview=True)
        self.map = check_lessons(self.root).map


def _give_older_name(lesson: Path) -> None:
    """Names of before for the lesson and for its first stop that bears an id."""
    text = lesson.read_text("utf-8")
    named = re.sub(
        r"^( +)id: (.*)$", r"\g<0>\n\1formerly: [old-\2]", text, count=1, flags=re.MULTILINE
    )
    lesson.write_text(f"formerly: [old-{lesson.parent.name}]\n{named}", "utf-8")


def _shorten(file: Path, key: str, root: Path) -> None:
    """Keep the entries that a lesson names: reading all of them anew takes most of the time."""
    named = "".join(one.read_text("utf-8") for one in (root / "lessons").glob("*/lesson.yaml"))
    text = file.read_text("utf-8")
    head, _, body = text.partition(f"\n{key}:\n")
    entries = _entries(body)
    kept = [entry for name, entry in entries if name in named]
    file.write_text(f"{head}\n{key}:\n{''.join(kept)}", "utf-8")


def _entries(body: str) -> list[tuple[str, str]]:
    """The entries of a file of the library as they are written, by their ids."""
    found: list[tuple[str, str]] = []
    for line in body.splitlines(keepends=True):
        if line.startswith("  ") and line[2] not in " #\n":
            found.append((line.strip().partition(":")[0], line))
        elif found and not line.startswith("  #"):
            name, entry = found[-1]
            found[-1] = (name, entry + line)
    return found


def _lesson(name: str) -> Read:
    def read(kitchen: Kitchen, further: bool) -> Iterable[Problem]:
        worked = work_lesson(kitchen.root, f"lessons/{name}/lesson.yaml", kitchen.library)
        if further and worked.results:
            make_lesson(worked.results, kitchen.around)
        return worked.problems

    return read


def _library(kitchen: Kitchen, further: bool) -> Iterable[Problem]:
    library = read_library(kitchen.root)
    if not further:
        return ()
    worked = work_lesson(kitchen.root, "lessons/soup-night/lesson.yaml", library)
    if worked.results:
        make_lesson(worked.results, surroundings(kitchen.root, library, preview=True))
    return worked.problems


def _settings(kitchen: Kitchen, _: bool) -> Iterable[Problem]:
    load_settings(kitchen.root)
    return ()


def _page(kitchen: Kitchen, _: bool) -> Iterable[Problem]:
    return survey(load_settings(kitchen.root), kitchen.map, preview=False).problems


TARGETS = (
    Target("lesson", "lessons/two-days/lesson.yaml", _lesson("two-days"), 24),
    Target("lesson", "lessons/river-walk/lesson.yaml", _lesson("river-walk"), 10),
    Target("lesson", "lessons/garden-baskets/lesson.yaml", _lesson("garden-baskets"), 8),
    Target("translation", "lessons/soup-night/lesson.es.yaml", _lesson("soup-night"), 16),
    Target("captions", "lessons/river-walk/river-walk.en.vtt", _lesson("river-walk"), 12),
    Target("recorded", "lessons/river-walk/recorded.yaml", _lesson("river-walk"), 6),
    Target("reviewed", "lessons/river-walk/reviewed.yaml", _lesson("river-walk"), 4),
    Target("foods", "site_data/foods.yaml", _library, 4),
    Target("moves", "site_data/moves.yaml", _library, 4),
    Target("words", "site_data/words/es.yaml", _library, 4),
    Target("site", "site_data/site.yaml", _library, 4),
    Target("mkdocs", "mkdocs.yml", _settings, 3),
    Target("page", "lessons/care.md", _page, 1),
)
