"""From a lesson to a video of it: the steps of rehearsing, and of keeping what was filmed."""

from __future__ import annotations

from pathlib import Path

from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.present.rehearsal import rehearsal
from generator.present.say import Say
from generator.problems import LessonError
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from generator.write.rehearsal import Rehearsed, write_rehearsal


def rehearse(root: Path, lesson: str) -> Rehearsed:
    """Make the silent video of a lesson and the draft of its captions, beside the lesson.

    The video that the lesson names may be missing or too short: it is made here.

    Raises:
        LessonError: something else in the lesson must be put right, or as ``write_rehearsal``.
    """
    library = read_library(root)
    path = f"lessons/{lesson}/lesson.yaml"
    read = read_lesson(root, path, library, filmed=False)
    if not isinstance(read, Lesson):
        raise LessonError(read)
    say = Say(library.words[library.site.languages[0]])
    made = rehearsal(work_out(read, library), say, root / "theme")
    return write_rehearsal(made, (root / path).parent)
