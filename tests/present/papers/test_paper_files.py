"""Papers as files: what readers that did not make them find in them."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from xml.etree.ElementTree import Element
from zipfile import ZipFile

import pytest

from generator.author.papers import papers_of
from generator.compute.practice_set import Kind, plan_of, practice_set
from generator.compute.result import LessonResult
from generator.model.papers import USUAL
from generator.present.pages.take_home import KEEP_LIST, take_home_name
from generator.present.papers.paper import Size
from generator.present.papers.table import PAPERS
from generator.steps.work import work_lesson
from tests.html_page import one, read_page
from tests.lesson_facts import lesson_facts
from tests.made_papers import info, structure, words
from tests.pdf_letters import smallest
from tests.project import ROOT, library

LESSONS = sorted(file.parent.name for file in ROOT.glob("lessons/*/lesson.yaml"))
ENDINGS = ("a4", "letter", "large-a4", "large-letter")
SIZES = {"a4": "595.276 x 841.89 pts (A4)", "letter": "612 x 792 pts (letter)"}
"""ISO 216 and ANSI Y14.1, in points of 1/72 inch (from memory)."""


def test_every_paper_of_the_demo_is_there_and_no_other(made_papers: Path) -> None:
    """In each language of its lesson; cards where there are moves."""
    found = {file.relative_to(made_papers).as_posix() for file in made_papers.rglob("*.pdf")}
    assert found == {
        f"{top}{facts.name}/papers/{name}-{ending}.pdf"
        for facts in lesson_facts(ROOT)
        for top, source in (("", "lesson.yaml"), ("es/", "lesson.es.yaml"))
        if (ROOT / "lessons" / facts.name / source).is_file()
        for name in ("worksheet", "answers", "family", "notes", "packet", "cards")
        if name != "cards" or "moves" in facts.facts
        for ending in ENDINGS
    }


def test_each_is_tagged_and_says_its_title_language_and_size(made_papers: Path) -> None:
    # PDF/UA-1 (ISO 14289-1): tagged, with a title and a language (clauses from memory).
    for file in made_papers.rglob("*.pdf"):
        told = info(file)
        assert told["Tagged"] == "yes", file
        assert ": " in told["Title"], file
        assert told["Page size"] == SIZES[file.stem.rpartition("-")[2]], file
        spanish = file.relative_to(made_papers).parts[0] == "es"
        assert re.search(
            rb"/Lang\s*\(es-US\)" if spanish else rb"/Lang\s*\(en-US\)", file.read_bytes()
        )


@pytest.mark.parametrize("lesson", LESSONS)
@pytest.mark.parametrize("size", SIZES)
def test_a_worksheet_and_its_key_take_two_sheets(made_papers: Path, lesson: str, size: str) -> None:
    folder = made_papers / lesson / "papers"
    assert int(info(folder / f"answers-{size}.pdf")["Pages"]) <= 2
    most = 3 if lesson == "two-days" else 2
    assert int(info(folder / f"worksheet-{size}.pdf")["Pages"]) <= most


def test_nothing_of_the_machine_is_in_a_file(made_papers: Path) -> None:
    for file in made_papers.rglob("*-a4.pdf"):
        told = info(file)
        assert not {"CreationDate", "ModDate"} & told.keys()
        assert str(ROOT).encode() not in file.read_bytes()
        assert "Author" not in told


def test_two_makes_give_the_same_bytes(made_papers: Path) -> None:
    for made in papers_of(ROOT, ["soup-night"], [Size.A4]):
        assert (made_papers / made.path).read_bytes() == made.content, made.path


def test_headings_lists_tables_and_pictures_are_tagged(made_papers: Path) -> None:
    said = structure(made_papers / "soup-night/papers/worksheet-a4.pdf")
    for tag in ("H1", "H2", "Table", "TH", "TD", "Figure"):
        assert re.search(rf"^\s*{tag}\b", said, re.MULTILINE), tag


def test_every_template_is_named_by_an_entry() -> None:
    shared = {"look", "frame", "asked", "class_sheet", "class_key", "review"}
    files = {file.stem for file in (ROOT / "theme/papers").glob("*.typ")} - shared
    assert files == {paper.template for paper in PAPERS}


WORD = re.compile(r"\w+")
LETTER_SIZES = {"": 12, "-large": 18}
"""Points, at least (the guide to the look; common practice for large print, no source)."""


def test_no_letter_is_smaller_than_a_print_promises(made_papers: Path) -> None:
    for file in made_papers.rglob("*.pdf"):
        if not file.name.startswith("packet"):  # it holds the sheets of the others
            least, said = smallest(file)
            assert least >= LETTER_SIZES["-large" if "-large-" in file.name else ""], (file, said)


@pytest.mark.parametrize("path", ["soup-night", "two-days", "garden-baskets", "es/river-walk"])
@pytest.mark.parametrize("name", ["worksheet", "answers"])
def test_a_file_says_all_that_its_page_says(
    made_papers: Path, built_site: Path, path: str, name: str
) -> None:
    """Word by word, how often each is said: what stands on the page stands in the file for paper."""
    page = read_page(built_site / path / f"{name}.html")
    wanted = Counter(WORD.findall(" ".join(said_on_paper(one(page, "sheet")))))
    assert sum(wanted.values()) > 100
    for ending in ("a4", "large-letter"):
        found = words(made_papers / path / "papers" / f"{name}-{ending}.pdf")
        assert not wanted - Counter(WORD.findall(found)), ending


@pytest.mark.parametrize("lesson", LESSONS)
def test_the_key_alone_tells_the_answers(made_papers: Path, lesson: str) -> None:
    folder = made_papers / lesson / "papers"
    sheet, key = (words(folder / f"{name}-a4.pdf") for name in ("worksheet", "answers"))
    result = worked_out_lesson(lesson)
    for problem in practice_set(lesson, plan_of(result), 3):
        if problem.kind is Kind.GAP:
            asked = f"{problem.first:,} − {problem.second:,} ="
            assert asked in sheet
            told = f"{asked} {problem.first - problem.second:,}"
            assert told in key
            assert told not in sheet


def worked_out_lesson(lesson: str) -> LessonResult:
    """A lesson of the demo with its numbers."""
    worked = work_lesson(ROOT, f"lessons/{lesson}/lesson.yaml", library())
    return worked.results["en"]


def said_on_paper(element: Element) -> Iterator[str]:
    """The texts of a sheet as it is printed with numbers."""
    hidden = "data-instead-of-numbers" in element.attrib
    if hidden or "side-name" in element.get("class", "").split():
        return
    yield element.text or ""
    for below in element:
        yield from said_on_paper(below)
        yield below.tail or ""


def test_no_copy_holds_them(built_site: Path) -> None:
    """A family that keeps a lesson, or carries it home, prints from its pages."""
    for lesson in LESSONS:
        folder = built_site / lesson
        assert list((folder / "papers").glob("*.pdf"))
        kept = json.loads((folder / KEEP_LIST).read_text("utf-8"))
        assert ".pdf" not in json.dumps(kept)
        with ZipFile(folder / take_home_name(lesson)) as carried:
            assert not [name for name in carried.namelist() if name.endswith(".pdf")]


def test_what_a_site_makes_by_itself_is_under_a_megabyte_a_lesson(made_papers: Path) -> None:
    for folder in made_papers.rglob("papers"):
        files = [folder / f"{name}-{size}.pdf" for name in USUAL for size in SIZES]
        took = sum(file.stat().st_size for file in files)
        assert took < 1_000_000, (folder, took)
