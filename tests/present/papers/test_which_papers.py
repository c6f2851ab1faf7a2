"""One line of `site.yaml` says which papers a site makes; a mistake in it is told at its place."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.model.papers import USUAL, PaperWord
from generator.present.pages.page import Surround
from generator.present.papers.table import PAPERS, lesson_papers
from generator.present.words.say import Say
from generator.problems import LessonError
from generator.read.library import read_library
from tests.project import GOOD, library, worked
from tests.site_project import copy_project, make_papers


def made(folder: Path, *words: str, preview: bool = False) -> list[str]:
    """Names of the files that a line of these words makes of a lesson."""
    site = library().site.model_copy(update={"papers": tuple(map(PaperWord, words))})
    say = Say(library().words["en"])
    around = Surround(site, say, folder="", links=(), elsewhere={}, preview=preview)
    return sorted(Path(one.path).stem for one in lesson_papers(worked(folder, GOOD), around))


@pytest.mark.parametrize(
    ("words", "files"),
    [
        ([], []),
        (["worksheet"], ["worksheet-a4", "worksheet-letter"]),
        (["worksheet", "letter"], ["worksheet-letter"]),
        (["a4", "packet"], ["packet-a4"]),
        (["a4", "letter", "answers"], ["answers-a4", "answers-letter"]),
        (["worksheet", "letter", "large"], ["worksheet-large-letter", "worksheet-letter"]),
        (["letter"], sorted(f"{name}-letter" for name in USUAL)),
    ],
)
def test_what_a_line_makes(tmp_path: Path, words: list[str], files: list[str]) -> None:
    assert made(tmp_path, *words) == files


def test_a_preview_makes_none(tmp_path: Path) -> None:
    assert made(tmp_path, "worksheet", preview=True) == []


def test_every_paper_of_the_table_has_its_word() -> None:
    how = {PaperWord.A4, PaperWord.LETTER, PaperWord.LARGE}
    assert {one.name for one in PAPERS} | {PaperWord.PACKET} | how == {*PaperWord}


def test_an_unknown_word_is_told_at_its_place_with_what_there_is(tmp_path: Path) -> None:
    root = copy_project(tmp_path / "site", lessons=False)
    make_papers(root, "worksheet", "xyz")
    with pytest.raises(LessonError) as told:
        read_library(root)
    [problem] = told.value.problems
    line = (root / "site_data/site.yaml").read_text("utf-8").count("\n")
    assert (problem.place.path, problem.place.line) == ("site_data/site.yaml", line)
    assert "cannot be `xyz`" in problem.what
    assert "`answers`" in problem.hint
