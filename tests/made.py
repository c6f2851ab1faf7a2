"""What a site's lessons are made into, in memory or in a folder, for tests that look at single files."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from pathlib import Path

from generator.engine.pack import KEPT
from generator.making import in_languages, make_lesson
from generator.present.output import Output
from generator.present.pictures.figures.of_moves import move_pictures, moves_of
from generator.read.library import read_library
from generator.steps.surroundings import surroundings
from generator.steps.work import lesson_files, work_lesson


def outputs(root: Path, *, preview: bool = False) -> Iterator[Output]:
    """Every file of every lesson, and the files they share; fails where something must be put right."""
    library = read_library(root)
    around = surroundings(root, library, preview=preview)
    yield from around.assets.values()
    for path in lesson_files(root):
        worked = work_lesson(root, path, library)
        assert worked.results, list(map(str, worked.problems))
        made = make_lesson(worked.results, around)
        yield from (one for one in made if not one.path.startswith(KEPT))
        yield from move_pictures(moves_of(worked.results.values()))


def page_outputs(root: Path) -> Iterator[Output]:
    """The pages of every lesson and what they show, without papers, copies and cartridges: a tenth of the work."""
    library = read_library(root)
    around = surroundings(root, library)
    yield from around.assets.values()
    for path in lesson_files(root):
        worked = work_lesson(root, path, library)
        assert worked.results, list(map(str, worked.problems))
        for lesson in in_languages(worked.results, around):
            yield from lesson.on_site(None)
        yield from move_pictures(moves_of(worked.results.values()))


def write_files(files: Iterable[Output], folder: Path) -> None:
    """Put files where their paths say, in a folder that may not be there yet."""
    for one in files:
        path = folder / one.path
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(one.content)
