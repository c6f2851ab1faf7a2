"""``reviewed.yaml`` is read as it was written, and each mistake in it is told at its line."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from generator.author.reviewed_text import reviewed_text
from generator.model.figure import FigureKind
from generator.model.reviewed import ReadNumber
from generator.problems import Problem
from generator.read.reviewed import read_reviewed

GOOD = """\
lesson: meal
reviews:
  - by: {en: registered dietitian, es: dietista registrada}
    on: "2026-03-14"
    languages: [en]
    numbers:
      lunch.total.gap: {kind: gap, value: 320, unit: kcal, of: "apple-raw, 1 medium"}
    facts: {allergens: milk}
    texts:
      en: {title: ["12e456"], table.ideas: [aaaaaa, bbbbbb]}
"""


def put(root: Path, text: str) -> None:
    (root / "lessons/meal").mkdir(parents=True)
    (root / "lessons/meal/reviewed.yaml").write_text(text, "utf-8")


def test_a_reading_as_it_was_written(tmp_path: Path) -> None:
    put(tmp_path, GOOD)
    problems: list[Problem] = []
    read = read_reviewed(tmp_path, "lessons/meal", problems)
    assert problems == []
    assert read is not None
    (one,) = read.file.reviews
    assert one.numbers["lunch.total.gap"] == ReadNumber.model_construct(
        kind=FigureKind.GAP, value=Decimal(320), unit="kcal", of="apple-raw, 1 medium"
    )
    assert one.texts == {"en": {"title": ("12e456",), "table.ideas": ("aaaaaa", "bbbbbb")}}
    (tmp_path / "lessons/meal/reviewed.yaml").write_text(
        reviewed_text("meal", read.file.reviews), "utf-8"
    )
    again = read_reviewed(tmp_path, "lessons/meal", problems)
    assert again is not None
    assert again.file == read.file


@pytest.mark.parametrize(
    ("old", "new", "line", "what"),
    [
        ("registered dietitian", "Jane Miller", 3, "may be somebody's name"),
        (
            "{en: registered dietitian, es: dietista registrada}",
            "Jane Miller",
            3,
            "somebody's name",
        ),
        ("2026-03-14", "2026-02-31", 4, "no day"),
        ("2026-03-14", "in March", 4, "write year, month and day, such as 2026-03-14"),
        ("by: {", "name: Jane\n    by: {", 3, "`name` is not a key that belongs here"),
        ("languages: [en]", "languages: []", 5, "too few"),
        ("value: 320", "value: lots", 7, "must be a number"),
        ("kind: gap", "kind: gp", 7, "did you mean `gap`"),
        ("[aaaaaa, bbbbbb]", "aaaaaa", 10, "must be a list"),
        ("lesson: meal\n", "", 1, "`lesson:` is missing"),
        (
            "lesson: meal\n",
            "<<<<<<< ours\nlesson: meal\n=======\nlesson: lunch\n>>>>>>> theirs\n",
            1,
            "merge",
        ),
        ("reviews:", "reviews: [", 3, "cannot be read here"),
    ],
)
def test_a_mistake_is_told_at_its_line(
    tmp_path: Path, old: str, new: str, line: int, what: str
) -> None:
    assert old in GOOD
    put(tmp_path, GOOD.replace(old, new, 1))
    problems: list[Problem] = []
    assert read_reviewed(tmp_path, "lessons/meal", problems) is None
    assert problems
    assert {one.place.path for one in problems} == {"lessons/meal/reviewed.yaml"}
    assert any(what in str(one) for one in problems), list(map(str, problems))
    assert line in {one.place.line for one in problems}, list(map(str, problems))


def test_without_a_file_nobody_has_read_it(tmp_path: Path) -> None:
    (tmp_path / "lessons/meal").mkdir(parents=True)
    assert read_reviewed(tmp_path, "lessons/meal", []) is None
