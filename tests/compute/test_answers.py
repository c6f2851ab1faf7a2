"""Computed answers: in the ledger with their steps, or told with their line and a way out.

GOOD holds 170 and 260 kcal in its first row, 80 and 110 in its second, 250 and 370 in all.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.author.trace_text import trace_lines
from generator.check.answers import answers_can_be_said
from generator.compute.holding import Holding
from generator.compute.result import ChosenAnswer, LessonResult
from tests.project import GOOD, worked


def with_parting(root: Path, lines: str) -> LessonResult:
    return worked(root, GOOD.replace("stops:\n", f"parting: {{prompt: So?, {lines}}}\nstops:\n", 1))


def test_the_answer_is_a_number_of_the_ledger_with_its_steps(tmp_path: Path) -> None:
    result = with_parting(tmp_path, "answer: half breakfast.total.on-the-way")
    told = list(trace_lines(result.figures))
    assert told[-2:] == [
        "parting.answer: 185 kcal",
        "    answer: 370 ÷ 2 = 185, from breakfast.total.on-the-way",
    ]
    assert list(answers_can_be_said(result)) == []


def test_the_name_of_the_only_comparison_may_be_left_out(tmp_path: Path) -> None:
    result = with_parting(tmp_path, "answer: total.gap")
    assert result.figures[-1].value == 120


@pytest.mark.parametrize(
    ("which", "food"),
    [
        ("{of: breakfast, holds: most}", "bagel-plain"),
        ("{of: breakfast, holds: least}", "apple-raw"),
        ("{of: breakfast, holds: breakfast.apple-raw_juice.gap + half total.gap * 4 / 3}", "juice"),
    ],
)
def test_the_food_that_is_asked_for_is_found(tmp_path: Path, which: str, food: str) -> None:
    """30 + 120 ÷ 2 × 4 ÷ 3 = 110, the juice."""
    result = with_parting(tmp_path, f"which: {which}")
    answer = result.answers["parting"]
    assert isinstance(answer, ChosenAnswer)
    right = answer.options[answer.right]
    assert isinstance(right, Holding)
    assert right.id == food
    assert len(answer.options) == 4


def test_the_side_that_is_asked_for_is_found(tmp_path: Path) -> None:
    result = with_parting(tmp_path, "which: {of: breakfast, among: sides, holds: most}")
    answer = result.answers["parting"]
    assert isinstance(answer, ChosenAnswer)
    assert (answer.options, answer.right, answer.value) == ((0, 1), 1, 370)


def test_a_comparison_is_asked_of_where_there_is_none(tmp_path: Path) -> None:
    """The lesson is left with its first stop, which is watched."""
    alone = GOOD.partition("  - ask:")[0].replace("stops:", "parting: {ASKED}\nstops:")
    asked = alone.replace("ASKED", "prompt: Which?, which: {of: lunch, holds: most}")
    [problem] = answers_can_be_said(worked(tmp_path, asked))
    assert problem.hint == "add a compare stop first"


@pytest.mark.parametrize(
    ("lines", "what", "hint"),
    [
        ("answer: total.gp", "`total.gp` is no number of the lesson", "did you mean `total.gap`?"),
        ("answer: half breakfast.apple-raw_juice.on-the-way ÷ 2", "110 ÷ 2 ÷ 2 = 55/2, is not whole", ""),
        ("answer: total.at-home - total.on-the-way", "250 − 370, lies below zero", "smaller"),
        ("which: {of: breakfst, holds: most}", "`of: breakfst` is no compare stop", "`breakfast`"),
        ("which: {of: breakfast, holds: total.gap}", "holds total.gap: none", "exactly one"),
        ("which: {of: breakfast, holds: total.count}", "`holds:` is not in kcal", ""),
    ],
)  # fmt: skip
def test_an_answer_that_cannot_be_said_is_told_at_its_line(
    tmp_path: Path, lines: str, what: str, hint: str
) -> None:
    [problem] = answers_can_be_said(with_parting(tmp_path, lines))
    assert what in problem.what
    assert hint in problem.hint
    assert problem.place.line == 6


def test_an_ask_stop_is_told_at_its_own_line(tmp_path: Path) -> None:
    ask = "      prompt: Which side holds more?\n"
    assert ask in GOOD
    result = worked(tmp_path, GOOD.replace(ask, f"{ask}      answer: total.gap / 7\n"))
    [problem] = answers_can_be_said(result)
    assert "120 ÷ 7 = 120/7, is not whole" in problem.what
    assert problem.place.line == GOOD[: GOOD.index(ask)].count("\n") + 2


def test_two_foods_that_hold_as_much_are_not_one_answer(tmp_path: Path) -> None:
    alike = GOOD.replace("name: Juice, value: 110", "name: Juice, value: 260")
    result = worked(
        tmp_path,
        alike.replace(
            "stops:\n", "parting: {prompt: So?, which: {of: breakfast, holds: most}}\nstops:\n", 1
        ),
    )
    [problem] = answers_can_be_said(result)
    assert "which of the foods holds most: 2 of them" in problem.what
