"""A set is of the lesson's own size and step: gaps, counts with something left over, an even row, a side to name."""

from __future__ import annotations

import json
from pathlib import Path
from typing import TypedDict

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from generator.compute.practice_set import SIZES, Kind, Plan, plan_of, practice_set
from tests.project import GOOD, worked

EXAMPLES = json.loads(
    (Path(__file__).parents[1] / "examples" / "practice.json").read_text(encoding="utf-8")
)
PLANS = st.builds(Plan, st.sampled_from(SIZES), st.sampled_from([0, 1, 2, 4, 5, 10, 20, 50, 100]))


class SetCase(TypedDict):
    """The first problems of a set in practice.json."""

    title: str
    seed: str
    largest: int
    per: int
    problems: list[tuple[str, int, int]]


@pytest.mark.parametrize("case", EXAMPLES["sets"], ids=lambda case: case["title"])
def test_a_seed_gives_its_set(case: SetCase) -> None:
    made = practice_set(case["seed"], Plan(case["largest"], case["per"]), len(case["problems"]))
    assert [[one.kind, one.first, one.second] for one in made] == case["problems"]


@settings(deadline=None, max_examples=40)  # each example makes many problems
@given(st.text(max_size=20), PLANS)
def test_every_set_keeps_to_its_size_and_its_kinds(seed: str, plan: Plan) -> None:
    made = practice_set(seed, plan, 12)
    assert all(0 < one.second <= plan.largest and 0 < one.first <= plan.largest for one in made)
    assert sum(one.kind is Kind.GAP and one.first == one.second for one in made) == 2
    assert sum(one.kind is Kind.WHICH and one.first != one.second for one in made) == 2
    counts = [one for one in made if one.kind is Kind.COUNT]
    assert len(counts) == (4 if plan.per > 1 and 2 * plan.per <= plan.largest + 1 else 0)
    for one in counts:
        assert one.second == plan.per
        assert one.first // one.second >= 1
        assert one.first % one.second


def test_a_lesson_gives_its_own_size_and_step(tmp_path: Path) -> None:
    """170 and 260, 80 and 110 kcal, counted in tens."""
    assert plan_of(worked(tmp_path, GOOD)) == Plan(1000, 10)


def test_small_numbers_are_practised_small(tmp_path: Path) -> None:
    fiber = "measure: fiber"
    small = GOOD.replace("measure: energy", fiber).replace("value: 110", "value: 4")
    assert plan_of(worked(tmp_path, small.replace("per: 10", "per: 2"))) == Plan(20, 2)
