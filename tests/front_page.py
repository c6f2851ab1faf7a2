"""Gives tests and benches the front page of as many lessons as they want: those of the demo, over and over."""

from __future__ import annotations

import os
import shutil
from dataclasses import replace
from functools import cache
from pathlib import Path

from markupsafe import Markup

from generator.present.assets.environment import Theme
from generator.present.entry import LessonEntry, in_chosen_order, lesson_entry
from generator.present.languages import folder_of
from generator.present.pages.page import Surround
from generator.present.presenter import Presenter
from generator.present.words.say import Say
from generator.steps.work import work_lesson
from tests.project import ROOT, library


def site_of_many(built: Path, folder: Path, lessons: int) -> Path:
    """A copy of the built demo whose English front page lists so many lessons, each with a number in its title."""
    site = Path(shutil.copytree(built, folder, copy_function=os.link))
    front = site / "index.html"
    front.unlink()  # the demo's own has the same content
    front.write_text(front_page(lessons), "utf-8")
    return site


def front_page(lessons: int, language: str = "en") -> str:
    """The front page of so many lessons, by the program itself."""
    known = demo_entries(language)
    entries = [known[number % len(known)] for number in range(lessons)]
    numbered = [
        replace(entry, title=f"{entry.title} {number}") for number, entry in enumerate(entries, 1)
    ]
    words, site = library().words[language], library().site
    around = Surround(
        site=site,
        say=Say(words),
        folder=folder_of(language, site),
        links=(),
        elsewhere={"es": frozenset(entry.id for entry in demo_entries("es"))},
        preview=False,
    )
    intro = Markup("<p>Pick one.</p>")
    return Presenter(Theme(ROOT / "theme"), around).home(numbered, intro, headed=False)


@cache
def demo_entries(language: str) -> tuple[LessonEntry, ...]:
    """What the lists say of the demo's lessons in a language, in their order."""
    paths = sorted(file.relative_to(ROOT).as_posix() for file in ROOT.glob("lessons/*/lesson.yaml"))
    results = [work_lesson(ROOT, path, library()).results for path in paths]
    return in_chosen_order(lesson_entry(one[language]) for one in results if language in one)
