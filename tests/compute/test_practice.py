"""Practice problems come back from their seed, keep to their size, and tell mistakes apart."""

from __future__ import annotations

import json
from decimal import Decimal
from itertools import islice
from pathlib import Path
from typing import TypedDict

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.compute.mistakes import Mistake, gap_answers, gap_mistake
from generator.compute.practice import LARGEST, _draws, practice_problems
from generator.compute.text_hash import text_hash

EXAMPLES = json.loads(
    (Path(__file__).parents[1] / "examples" / "practice.json").read_text(encoding="utf-8")
)
BUGS = (
    Mistake.SMALLER_FROM_LARGER,
    Mistake.NO_DECREMENT,
    Mistake.ZERO_GIVES_DIGIT,
    Mistake.ZERO_GIVES_ZERO,
    Mistake.ACROSS_ZERO,
)
SIZES = st.sampled_from(sorted(LARGEST.values()))


class SeedCase(TypedDict):
    """The first problems of a seed in practice.json."""

    title: str
    seed: str
    largest: int
    problems: list[tuple[int, int]]


@pytest.mark.parametrize("case", EXAMPLES["problems"], ids=lambda case: case["title"])
def test_a_seed_gives_its_problems(case: SeedCase) -> None:
    made = practice_problems(case["seed"], case["largest"], len(case["problems"]))
    assert [[one.larger, one.smaller] for one in made] == case["problems"]


@pytest.mark.parametrize("case", EXAMPLES["hash"], ids=lambda case: case["text"] or "nothing")
def test_texts_are_hashed_as_published(case: dict[str, object]) -> None:
    assert text_hash(str(case["text"])) == case["hash"], case["source"]


@pytest.mark.parametrize("case", EXAMPLES["shifts"], ids=lambda case: str(case["before"]))
def test_numbers_are_drawn_as_published(case: dict[str, int]) -> None:
    """A draw leaves out the three lowest bits."""
    assert next(_draws(case["before"])) == case["after"] >> 3, case["source"]


@settings(deadline=None, max_examples=30)  # each example makes many problems
@given(st.text(max_size=20), SIZES)
def test_problems_keep_to_their_size_and_differ(seed: str, largest: int) -> None:
    made = practice_problems(seed, largest, 12)
    assert len(set(made)) == 12
    assert all(0 < one.smaller < one.larger <= largest for one in made)
    assert practice_problems(seed, largest, 30)[:12] == made


@settings(deadline=None, max_examples=30)  # each example makes many problems
@given(st.text(max_size=20), SIZES)
def test_every_problem_shows_a_bug(seed: str, largest: int) -> None:
    """Where nothing is borrowed, each of these bugs gives the right answer and tells nothing."""
    for one in practice_problems(seed, largest, 12):
        assert wrong_answers(one.larger, one.smaller)


@pytest.mark.parametrize("largest", LARGEST.values())
def test_bugs_can_nearly_always_be_told_apart(largest: int) -> None:
    """Not always: with one borrowing, and at a 0, 0 − N = N and smaller-from-larger are one answer."""
    seeds = [f"seed {number}" for number in range(20)]
    made = [one for seed in seeds for one in practice_problems(seed, largest, 12)]
    told = [one for one in made if len(set(w := wrong_answers(one.larger, one.smaller))) == len(w)]
    assert len(told) / len(made) > 0.9


def test_what_is_told_apart_is_read_as_what_it_was() -> None:
    for one in practice_problems("told apart", 1000, 60):
        answers = gap_answers(one.larger * 10, one.smaller * 10)
        wrong = wrong_answers(one.larger, one.smaller)
        for bug in BUGS:
            if answers[bug] and wrong.count(answers[bug][0]) == 1:
                numbers = (Decimal(one.larger), Decimal(one.smaller), answers[bug][0] / 10)
                assert gap_mistake(*numbers) is bug


def test_draws_do_not_stand_still() -> None:
    """From 0 an xorshift never leaves 0 (Marsaglia 2003)."""
    assert len(set(islice(_draws(0), 100))) == 100


def wrong_answers(larger: int, smaller: int) -> list[Decimal]:
    """What the bugs make of a problem, in tenths, without those that come out right."""
    answers = gap_answers(larger * 10, smaller * 10)
    right = Decimal(larger - smaller) * 10
    return [answer for bug in BUGS for answer in answers[bug] if answer != right]
