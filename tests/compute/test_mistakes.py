"""Wrong answers are read as the published subtraction bugs and our own list of slips say."""

from __future__ import annotations

import json
from decimal import Decimal
from pathlib import Path
from typing import TypedDict

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.mistakes import Mistake, count_mistake, gap_answers, gap_mistake
from generator.read.source import read_source

EXAMPLES = json.loads(
    (Path(__file__).parents[1] / "examples" / "mistakes.json").read_text(encoding="utf-8")
)
WORDS = Path(__file__).parents[2] / "site_data" / "words"


class GapCase(TypedDict):
    """A wrong gap of mistakes.json."""

    title: str
    larger: str
    smaller: str
    answer: str
    mistake: str | None
    source: str
    status: str


class CountCase(TypedDict):
    """A wrong count of mistakes.json."""

    title: str
    gap: str
    per: str
    answer: str
    mistake: str | None
    source: str
    status: str


@pytest.mark.parametrize("case", EXAMPLES["gap"], ids=lambda case: case["title"])
def test_gap(case: GapCase) -> None:
    found = gap_mistake(Decimal(case["larger"]), Decimal(case["smaller"]), Decimal(case["answer"]))
    assert found == case["mistake"], case["source"]


@pytest.mark.parametrize("case", EXAMPLES["count"], ids=lambda case: case["title"])
def test_count(case: CountCase) -> None:
    found = count_mistake(Decimal(case["gap"]), Decimal(case["per"]), Decimal(case["answer"]))
    assert found == case["mistake"], case["source"]


def test_every_mistake_has_an_example() -> None:
    assert {case["mistake"] for case in EXAMPLES["gap"] + EXAMPLES["count"]} == {*Mistake, None}


@given(st.tuples(st.integers(0, 99_999), st.integers(0, 99_999)).map(sorted))
def test_the_right_answer_is_never_a_mistake(pair: list[int]) -> None:
    smaller, larger = (Decimal(tenths) / 10 for tenths in pair)
    assert gap_mistake(larger, smaller, larger - smaller) is None


@given(st.tuples(st.integers(0, 99_999), st.integers(0, 99_999)).map(sorted))
def test_without_borrowing_no_bug_of_borrowing_shows(pair: list[int]) -> None:
    """Where each lower digit fits under its upper one, a child with any of these bugs is right."""
    smaller, larger = pair
    if all(int(b) <= int(a) for a, b in zip(str(larger)[::-1], str(smaller)[::-1], strict=False)):
        answers = gap_answers(larger, smaller)
        for bug in (
            Mistake.SMALLER_FROM_LARGER,
            Mistake.NO_DECREMENT,
            Mistake.ZERO_GIVES_DIGIT,
            Mistake.ZERO_GIVES_ZERO,
        ):
            assert answers[bug] == (larger - smaller,)


@given(st.integers(0, 9_999), st.integers(1, 200))
def test_the_right_count_is_never_a_mistake(gap: int, per: int) -> None:
    assert count_mistake(Decimal(gap), Decimal(per), Decimal(gap // per)) is None


@pytest.mark.parametrize(("larger", "smaller"), [("10", "20"), ("10", "-1"), ("1.25", "1")])
def test_values_that_are_none_are_refused(larger: str, smaller: str) -> None:
    with pytest.raises(ValueError, match=r"smaller than|no shown value"):
        gap_mistake(Decimal(larger), Decimal(smaller), Decimal(0))


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_mistake_has_its_sentence(language: str) -> None:
    texts = read_source(language, (WORDS / f"{language}.yaml").read_text(encoding="utf-8")).data
    assert isinstance(texts, dict)
    assert [mistake for mistake in Mistake if not texts.get(f"not_yet_{mistake}")] == []
