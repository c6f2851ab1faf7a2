"""Worksheet and answer key hold the same problems, and only one of them the answers."""

from __future__ import annotations

import re
from decimal import Decimal

import html5lib
import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.present.pictures.columns import columns
from tests.paper_lesson import built_lesson, every_move

VALUES = st.decimals(min_value=0, max_value=99999, places=1)


@pytest.mark.parametrize(
    ("larger", "smaller", "gap", "rows"),
    [
        # Common practice, no source: digits of the same place stand under each other.
        ("410", "90", "320", ("410", " 90", "320")),
        ("12", "4.5", "7.5", ("120", " 45", " 75")),
        ("0", "0", "0", ("0", "0", "0")),
    ],
)
def test_digits_of_one_place_stand_in_one_column(
    larger: str, smaller: str, gap: str, rows: tuple[str, str, str]
) -> None:
    made = columns(larger, smaller, gap)
    for which, row in zip(("larger", "smaller", "gap"), rows, strict=True):
        assert "".join(getattr(column, which) or " " for column in made) == row


@given(VALUES, VALUES)
def test_columns_read_as_the_numbers_they_were_made_of(one: Decimal, other: Decimal) -> None:
    # Place value, CCSS 2.NBT.A.1 (code from memory): each digit is worth its place.
    numbers = {"larger": max(one, other), "smaller": min(one, other), "gap": abs(one - other)}
    made = columns(*(f"{number.normalize():f}" for number in numbers.values()))
    point = next((i for i, column in enumerate(made) if column.after_point), len(made))
    for which, number in numbers.items():
        worth = (
            Decimal(getattr(column, which) or 0).scaleb(point - 1 - i)
            for i, column in enumerate(made)
        )
        assert sum(worth) == number


@pytest.fixture(scope="module")
def pages(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    folder = built_lesson(tmp_path_factory.mktemp("paper"), every_move()[:3])
    return {
        name: (folder / f"{name}.html").read_text(encoding="utf-8")
        for name in ("cards", "worksheet", "answers")
    }


def test_worksheet_and_answer_key_hold_the_same_problems(pages: dict[str, str]) -> None:
    problems = texts(pages["worksheet"], "value")
    assert len(problems) == 6  # two sides of three rows
    assert texts(pages["answers"], "value") == problems
    assert len(texts(pages["answers"], "gap")) == len(texts(pages["worksheet"], "given")) == 3


def test_the_answer_key_answers_and_the_worksheet_does_not(pages: dict[str, str]) -> None:
    for name in ("line", "gap", "working"):
        assert all(texts(pages["answers"], name))
    assert all("÷ 50 =" in working for working in texts(pages["answers"], "working")[:3])
    assert texts(pages["answers"], "likely")
    assert not any(texts(pages["worksheet"], "line"))
    for name in ("gap", "working", "reveal", "likely"):
        assert texts(pages["worksheet"], name) == []


def test_every_card_leads_back_to_the_lesson(pages: dict[str, str]) -> None:
    assert len(texts(pages["cards"], "card")) == len(texts(pages["cards"], "qr")) == 3
    assert len(set(texts(pages["cards"], "stamp"))) == 1


def test_paper_asks_nothing_of_a_child(pages: dict[str, str]) -> None:
    # Common practice, no source: a sheet that may lie about has no place for a name.
    for page in pages.values():
        assert not re.search(r"<(input|form|textarea|select)\b|\bname:", page, re.IGNORECASE)


def texts(page: str, name: str) -> list[str]:
    """The texts of all elements of a class, in order, without space around them."""
    tree = html5lib.parse(page, namespaceHTMLElements=False)
    return [
        "".join(element.itertext()).strip()
        for element in tree.iter()
        if name in (element.get("class") or "").split()
    ]
