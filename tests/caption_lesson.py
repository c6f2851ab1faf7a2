"""Gives tests of captions a lesson with cues of their own."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path

from generator.compute.result import LessonResult
from generator.model.captions import CaptionFile, CaptionLimits
from generator.model.grades import parse_grades
from generator.model.ids import lesson_ids
from generator.model.lesson import Lesson, LessonFile
from generator.model.places import Places
from generator.model.stops import Stop
from generator.present.recording.webvtt import cue, webvtt
from generator.problems import Problem
from generator.read.vtt import read_vtt
from tests.project import worked

LESSON = """\
title: Two breakfasts
summary: Find the gap.
grades: 3-5
minutes: 10
goals: [Subtract.]
stops:
  - watch: {from: "0:00", to: "0:20"}
    say: Hello from Larkmead. We take our time with each of these foods today.
  - ask:
      id: guess
      at: "0:30"
      prompt: Which side holds more?
      reveal: We will see.
  - compare:
      id: breakfast
      at: "1:00"
      measure: energy
      sides: [At home, On the way]
      rows:
        - [{name: Oatmeal, value: 170, source: card}, {name: Plain bagel, value: 260, source: card}]
        - [{name: Carrot salad, value: 110, source: card}, {name: Juice, value: 1020, source: card}]
      solve: [gap, count, total]
    say: |
      Row one. My oatmeal holds 170. The bagel holds 260.

      Row two. The carrot salad holds 110. The juice holds 1,020.
  - move:
      at: "1:30"
      for: breakfast
      one_move_per: 10
      moves: [march, side-step]
"""
"""Gaps 90 and 910, counts 9 and 91, totals 280 and 1,280, their gap 1,000."""

Timed = tuple[float, float, str]
"""Start and end in seconds, and the words."""


def of_stops(*stops: Stop, limits: CaptionLimits | None = None, grades: str = "3-5") -> Lesson:
    """A lesson of these stops, not read from a file."""
    file = LessonFile.model_construct(title="T", grades=parse_grades(grades), stops=stops)
    return Lesson(
        "t", file, Places("t", {}, {}), lesson_ids(stops), caption_limits=limits or CaptionLimits()
    )


def filed(cues: Iterable[Timed], language: str = "en") -> CaptionFile:
    """A caption file of these cues, written and read."""
    text = webvtt(cue(round(start * 1000), round(end * 1000), words) for start, end, words in cues)
    read = read_vtt(f"lessons/meal/meal.{language}.vtt", language, text)
    assert isinstance(read, CaptionFile), list(map(str, read))
    return read


def captioned(
    folder: Path, *cues: Timed, lesson: str = LESSON, limits: CaptionLimits | None = None
) -> LessonResult:
    """The lesson with these captions."""
    result = worked(folder, lesson)
    changed = replace(
        result.lesson,
        captions={"en": filed(cues)},
        caption_limits=limits or CaptionLimits(),
        duration=100.0,
    )
    return replace(result, lesson=changed)


def lines(problems: Iterable[Problem]) -> list[str]:
    """Line and column of each problem, and what is wrong."""
    return [f"{one.place.line}:{one.place.column}: {one.what}" for one in problems]
