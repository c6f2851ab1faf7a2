"""The sheet to read a lesson by holds every number with its source, every text and every line of care, and no name."""

from __future__ import annotations

import re
import shutil
from decimal import Decimal
from io import BytesIO
from pathlib import Path

import pytest
from click.testing import CliRunner, Result
from pypdf import PdfReader

from generator.author.reviewed import every_language, keep_review
from generator.check.claims.told import phrases
from generator.cli.commands import commands
from generator.compute.steps import FromRecord, OwnValue, Weighed
from generator.model.figure import FigureKind
from generator.model.text_marks import For
from generator.model.texts import lesson_texts
from generator.present.words.care import care_lines
from generator.present.words.prose import plain
from generator.present.words.say import Say
from tests.outside.pdf_ua import broken_points
from tests.pdf_letters import smallest
from tests.project import ROOT

FOOT = re.compile(r" · [2-9A-Z]{6}\b|^\d+ / \d+$")
SIZES = {"a4": (595.276, 841.89), "letter": (612, 792)}
"""ISO 216 and ANSI Y14.1, in points of 1/72 inch (from memory)."""


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """Two lessons of the demo: one with counts and claims, one with days."""
    for name in ("site_data", "theme", "lessons/river-walk", "lessons/two-days", "mkdocs.yml"):
        (shutil.copytree if (ROOT / name).is_dir() else shutil.copy)(ROOT / name, tmp_path / name)
    return tmp_path


def review(root: Path, *words: str) -> Result:
    done = CliRunner().invoke(commands, ["review", *words, "--root", str(root)])
    assert done.exit_code == 0, done.output
    return done


def bare(text: str) -> str:
    """Letters and digits alone: lines are broken where they must be, and quotes are curled."""
    return "".join(sign for sign in text.casefold() if sign.isalnum())


def told(pdf: bytes) -> str:
    """Everything on it; the foot of a sheet may stand in the midst of a text that goes on on the next."""
    pages = (page.extract_text().splitlines() for page in PdfReader(BytesIO(pdf)).pages)
    return bare("".join(line for page in pages for line in page if not FOOT.search(line)))


@pytest.mark.parametrize(
    ("lesson", "language", "size"),
    [
        ("river-walk", "en", "a4"),
        ("river-walk", "es", "letter"),
        ("two-days", "en", "letter"),
    ],
)
def test_everything_to_read_stands_on_it(
    root: Path, tmp_path: Path, lesson: str, language: str, size: str
) -> None:
    file = tmp_path / "sheet.pdf"
    review(root, lesson, "--language", language, "--size", size, str(file))
    pdf = file.read_bytes()
    held, result = told(pdf), every_language(root, lesson)[language]
    say = Say(result.library.words[language])
    for figure in result.figures:
        if figure.kind is not FigureKind.ONE_MOVE_PER:
            assert bare(say.number(figure.value)) in held, figure.id
        for step in figure.steps:
            if isinstance(step, FromRecord):
                entry = step.food.entry
                for source in (f"FDC {entry.fdc}", entry.record, step.food.release):
                    assert bare(source) in held, (figure.id, source)
            elif isinstance(step, Weighed):
                assert bare(say.number(Decimal(str(float(step.serving.grams))))) in held, figure.id
            elif isinstance(step, OwnValue):
                assert bare(step.item.source or "") in held, figure.id
    for one in lesson_texts(result.lesson.file, For.LEARNER_READS, For.LEARNER_HEARS):
        if one.mark.translated and not one.mark.by_words:
            for line in one.text.splitlines():
                assert bare(str(plain(line))) in held, one.path
    for line in care_lines(result, say):
        assert bare(line) in held, line
    assert broken_points(pdf) == []
    assert smallest(file)[0] >= 12
    box = PdfReader(file).pages[0].mediabox
    assert (float(box.width), float(box.height)) == pytest.approx(SIZES[size], abs=0.1)


def test_claims_and_numbers_of_texts_are_found_where_they_stand(root: Path) -> None:
    found = phrases(every_language(root, "river-walk")["en"])
    assert found["stops", 2, "compare", "reveal"] == tuple(("holds more", at) for at in range(3))
    assert ("45", 2) in found["stops", 2, "compare", "say"]  # before it, 45 pebbles
    assert ("45", 1) not in found["stops", 2, "compare", "say"]


def test_what_changed_since_the_last_reading_stands_first(root: Path, tmp_path: Path) -> None:
    """272 kcal × 155 g ÷ 100 = 421.6, shown as 420 (21 CFR 101.9(c)(1))."""
    keep_review(root, "river-walk", {"": "registered dietitian"}, "2026-03-14", ())
    foods = root / "site_data/foods.yaml"
    head, found, rest = foods.read_text("utf-8").partition("  apple-pie-homemade:")
    foods.write_text(head + found + rest.replace("energy: 265", "energy: 272", 1), "utf-8")
    file = tmp_path / "sheet.pdf"
    review(root, "river-walk", str(file))
    held = " ".join("".join(page.extract_text() for page in PdfReader(file).pages).split())
    first = held.partition("Look at these first")[2]
    assert first.strip().startswith("Read on March 14, 2026 by: registered dietitian.")
    assert "420 kcal" in first.partition("The whole lesson")[0].replace("\N{NO-BREAK SPACE}", " ")
    new = re.findall(r"New:", held)
    assert len(new) == 7, (
        "its value, gap and count, the total, gap and count of all, and the answer"
    )


def test_nobody_has_read_it_yet(root: Path, tmp_path: Path) -> None:
    file = tmp_path / "sheet.pdf"
    said = review(root, "two-days", str(file)).output
    assert "python3 generator reviewed two-days --by ROLE" in said
    assert "New:" not in "".join(page.extract_text() for page in PdfReader(file).pages)
    held = told(file.read_bytes())
    assert bare("Nobody has read this lesson in this language yet.") in held
    assert bare("never your name") in held


def test_a_folder_gets_a_file_with_a_name_of_its_own(root: Path, tmp_path: Path) -> None:
    review(root, "river-walk", "--size", "letter", str(tmp_path))
    assert (tmp_path / "review-river-walk-en-letter.pdf").is_file()
    done = CliRunner().invoke(
        commands, ["review", "river-walk", "--language", "fr", "--root", str(root)]
    )
    assert done.exit_code == 2
    assert "not there in `fr`; it is in `en`, `es`" in " ".join(done.output.split())
