"""From a lesson to a video of it: the steps of rehearsing, and of keeping what was filmed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from generator.author.recorded_text import recorded_text
from generator.carried import theme_of
from generator.compute.result import LessonResult
from generator.model.lesson import Lesson
from generator.present.recording.filmed import filmed_figures
from generator.present.recording.rehearsal import rehearsal
from generator.present.recording.slides.picture import TooFullError
from generator.present.words.say import Say
from generator.problems import LessonError, Problem
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from generator.steps.filled import worked_out
from generator.write.recorded import write_recorded
from generator.write.rehearsal import Rehearsed, write_rehearsal


def rehearse(root: Path, lesson: str) -> Rehearsed:
    """Make the silent video of a lesson and the draft of its captions, beside the lesson.

    The video that the lesson names may be missing or too short: it is made here.

    Raises:
        LessonError: something else in the lesson must be put right, a slide of it is too full, or as
            ``write_rehearsal``.
    """
    result, say = worked_lesson(root, lesson)
    try:
        made = rehearsal(result, say, Path(theme_of(root)))
    except TooFullError as error:
        raise LessonError([*_too_full(error, result.lesson)]) from None
    written = write_rehearsal(made, root / "lessons" / lesson)
    return replace(written, named=_names(result.lesson, written))


def _names(lesson: Lesson, written: Rehearsed) -> bool:
    """Whether a lesson names the files of its rehearsal already."""
    video = lesson.file.video
    return (
        video is not None
        and video.file == written.video.name
        and written.captions.name in video.captions.values()
    )


def _too_full(error: TooFullError, lesson: Lesson) -> Iterator[Problem]:
    """A problem for each stop of which a slide has no room for what stands on it."""
    for index in sorted({slide.stop for slide in error.slides}):
        kind = lesson.file.stops[index].kind
        what = f"a slide of this `{kind}` stop has no room for all that stands on it"
        hint = "shorten its title, its question, the last sentence of its `say:` or the names on it"
        yield Problem(lesson.places.at("stops", index), what, hint)


@dataclass(frozen=True, slots=True)
class Record:
    """What was kept of a film."""

    file: Path
    figures: int
    """How many numbers it has."""


def record(root: Path, lesson: str, on: str) -> Record:
    """Keep what the numbers of a lesson are on the day it is filmed, as ``2026-03-14``.

    Raises:
        LessonError: something in the lesson must be put right.
    """
    result, say = worked_lesson(root, lesson)
    figures = filmed_figures(result, say)
    file = write_recorded(root / "lessons" / lesson, recorded_text(lesson, on, figures))
    return Record(file, len(figures))


def worked_lesson(root: Path, lesson: str) -> tuple[LessonResult, Say]:
    """A lesson with its numbers, whatever its video is like."""
    library = read_library(root)
    read = read_lesson(root, f"lessons/{lesson}/lesson.yaml", library, filmed=False)
    if not isinstance(read, Lesson):
        raise LessonError(read)
    return worked_out(read, library), Say(library.words[library.site.languages[0]])
