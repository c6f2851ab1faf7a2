"""What of a film is watched at each stop, also where no stop has a time."""

from __future__ import annotations

from dataclasses import replace

from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.present.pages.film_parts import film_parts
from generator.present.words.say import Say
from generator.read.lesson import read_lesson
from tests.project import ROOT, library

SAY = Say(library().words["en"])


def filmed() -> Lesson:
    lesson = read_lesson(ROOT, "lessons/river-walk/lesson.yaml", library())
    assert isinstance(lesson, Lesson)
    return lesson


def test_each_part_runs_to_the_next_pause_and_the_last_to_the_end() -> None:
    parts = list(film_parts(work_out(filmed(), library()), SAY).values())
    assert len(parts) > 2
    assert all("," in part.moments for part in parts[:-1])
    assert "," not in parts[-1].moments


def test_a_film_without_times_has_no_parts() -> None:
    lesson = filmed()
    untimed = tuple(
        stop.model_copy(update={"at": None}) for stop in lesson.file.stops if stop.kind != "watch"
    )
    bare = replace(lesson, file=lesson.file.model_copy(update={"stops": untimed}))
    assert film_parts(replace(work_out(lesson, library()), lesson=bare), SAY) == {}
