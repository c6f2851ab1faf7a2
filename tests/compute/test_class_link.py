"""Class links: what they ask for comes back, what is spoiled or foreign opens nothing, and most slips are noticed."""

from __future__ import annotations

import json
import random
from typing import Any

import pytest

from generator.compute.base32 import SYMBOLS
from generator.compute.class_link import (
    LONGEST,
    Answers,
    ClassLink,
    Unopened,
    class_link,
    read_class_link,
)
from generator.compute.practice_set import SIZES
from tests.project import ROOT

CASES = json.loads((ROOT / "tests/examples/class-links.json").read_text("utf-8"))
WHOLE = CASES["links"][3]["fragment"]
LESSON = CASES["links"][3]["lesson"]


def link_of(told: dict[str, Any]) -> ClassLink:
    return ClassLink(
        tuple(told["stops"]),
        told["numbers"],
        told["seed"],
        told["blocksOnly"],
        told["largePrint"],
        Answers(told["answers"]),
    )


@pytest.mark.parametrize("case", CASES["links"], ids=lambda case: case["title"])
def test_a_link_and_what_it_asks_for(case: dict[str, Any]) -> None:
    link = link_of(case["link"])
    assert class_link(link, case["lesson"]) == case["fragment"]
    assert read_class_link(case["fragment"], case["lesson"]) == link


@pytest.mark.parametrize("case", CASES["also_read"], ids=lambda case: case["title"])
def test_what_programs_make_of_a_link_is_read(case: dict[str, Any]) -> None:
    assert case["written"] != case["as"]
    read = read_class_link(case["written"], case["lesson"])
    assert isinstance(read, ClassLink)
    assert read == read_class_link(case["as"], case["lesson"])


@pytest.mark.parametrize("case", CASES["unopened"], ids=lambda case: case["title"])
def test_what_opens_nothing_says_why(case: dict[str, Any]) -> None:
    assert read_class_link(case["fragment"], case["lesson"]) is Unopened(case["why"])


def test_every_size_of_practice_can_be_asked_for() -> None:
    for size in SIZES:
        link = ClassLink(numbers=size)
        assert read_class_link(class_link(link, LESSON), LESSON) == link


def test_a_huge_fragment_is_not_looked_through() -> None:
    link = ClassLink(tuple(f"stop-{number}" for number in range(LONGEST)))
    assert read_class_link(class_link(link, LESSON), LESSON) is Unopened.SPOILED
    assert read_class_link("for-class=" + "+" * 5_000_000, LESSON) is Unopened.SPOILED


def test_hardly_a_slip_goes_unnoticed(record_property: pytest.RecordProperty) -> None:
    """Two symbols of 32: one change in 1,024 has the same check."""
    draw, tries, believed = random.Random(13), 100_000, 0  # noqa: S311  # no secret
    asked = read_class_link(WHOLE, LESSON)
    letters = "abcdefghijklmnopqrstuvwxyz0123456789+;=-"
    for _ in range(tries):
        changed = list(WHOLE)
        for at in draw.sample(range(len(WHOLE)), draw.randint(1, 3)):
            changed[at] = draw.choice(SYMBOLS if at >= len(WHOLE) - 2 else letters)
        read = read_class_link("".join(changed), LESSON)
        believed += isinstance(read, ClassLink) and read != asked
    record_property("told", f"class links: {tries - believed:,} of {tries:,} changes noticed")
    assert believed <= tries * 2 / 1024


def test_a_link_of_one_lesson_opens_no_other() -> None:
    others = [f"lesson-{number}" for number in range(2000)]
    opened = [one for one in others if read_class_link(WHOLE, one) is not Unopened.SPOILED]
    assert len(opened) <= 10, opened  # 2 by chance
