"""What tests of reading share: the project's own library, and lessons given as text."""

from __future__ import annotations

import shutil
from functools import cache
from pathlib import Path

from generator.compute.result import LessonResult
from generator.model.lesson import Lesson
from generator.model.library import Library
from generator.problems import Problem
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from generator.steps.filled import worked_out

ROOT = Path(__file__).parents[1]

GOOD = """\
title: Two breakfasts
summary: Find the gap.
grades: 3-5
minutes: 10
goals: [Subtract.]
stops:
  - watch: {from: "0:00", to: "0:20"}
    say: Hello from Larkmead.
  - ask:
      id: guess
      at: "0:20"
      prompt: Which side holds more?
      hint: Look at the amounts.
      reveal: We will see.
  - compare:
      id: breakfast
      at: "0:40"
      measure: energy
      sides: [At home, On the way]
      rows:
        - [{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]
        - [{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]
      solve: [gap, count, total]
  - move:
      at: "1:20"
      for: breakfast
      one_move_per: 10
      moves: [march, side-step]
  - talk:
      prompt: What do you like?
      ideas: [Something warm]
"""
"""A lesson of every kind of stop but a day, in which nothing is wrong."""


@cache
def library() -> Library:
    """The project's own foods, moves and words."""
    return read_library(ROOT)


def site(folder: Path) -> Path:
    """A site with the project's own data and no lesson in it."""
    shutil.copytree(ROOT / "site_data", folder / "site_data", dirs_exist_ok=True)
    (folder / "lessons").mkdir(exist_ok=True)
    return folder


def put(root: Path, text: str | bytes, name: str = "meal") -> str:
    """Write a lesson file; returns its path below the root."""
    file = root / "lessons" / name / "lesson.yaml"
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_bytes(text.encode() if isinstance(text, str) else text)
    return file.relative_to(root).as_posix()


def read(root: Path, text: str | bytes, name: str = "meal") -> Lesson | list[Problem]:
    """A lesson file read against the project's own library."""
    return read_lesson(root, put(root, text, name), library())


def problems(root: Path, text: str | bytes, name: str = "meal") -> list[Problem]:
    """What is wrong with a lesson; fails where nothing is."""
    found = read(root, text, name)
    assert isinstance(found, list), "nothing was found to be wrong"
    return found


def worked(root: Path, text: str) -> LessonResult:
    """A lesson with its numbers; fails where something is wrong with it."""
    lesson = read(root, text)
    assert isinstance(lesson, Lesson), list(map(str, lesson))
    return worked_out(lesson, library())
