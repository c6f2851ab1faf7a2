"""How long a rehearsal of three minutes takes: drawing its slides, and encoding its video."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter

from bench.measuring.process import ROOT
from bench.measuring.row import Case, NothingMeasuredError, Row, row, told
from generator.compute.work_out import work_out
from generator.model.lesson import Lesson
from generator.present.recording.rehearsal import rehearsal
from generator.present.words.say import Say
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from generator.write.rehearsal import write_rehearsal

LESSON = "soup-night"


def rows(case: Case) -> Iterator[Row]:
    """Medians of several runs."""
    library = read_library(ROOT)
    lesson = read_lesson(ROOT, f"lessons/{LESSON}/lesson.yaml", library, filmed=False)
    if not isinstance(lesson, Lesson):
        raise NothingMeasuredError("; ".join(map(str, lesson)))
    result, say = work_out(lesson, library), Say(library.words["en"])
    drawing, encoding, length = [], [], 0
    for _ in range(case.runs):
        start = perf_counter()
        made = rehearsal(result, say, ROOT / "theme")
        drawn = perf_counter()
        with TemporaryDirectory() as folder:
            length = write_rehearsal(made, Path(folder)).seconds
        drawing.append(drawn - start)
        encoding.append(perf_counter() - drawn)
    yield told("rehearsal, length of the video", length, "s")
    yield told("rehearsal, slides", median(drawing), "s")
    yield told("rehearsal, video", median(encoding), "s")
    yield row("rehearsal", median(drawing) + median(encoding))
