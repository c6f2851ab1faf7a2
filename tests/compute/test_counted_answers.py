"""Answers that count: which answers of a lesson its page can check, and what they are called.

GOOD holds 170 and 260 kcal in its first row, 80 and 110 in its second, 250 and 370 in all.
"""

from __future__ import annotations

from pathlib import Path

from generator.compute.counted_answers import AskedTwice, answers_that_count, asked_twice, stops_of
from tests import pots_lesson
from tests.project import GOOD, worked

CHOICES = """\
      choices:
        - says: At home
        - says: On the way
          right: true
"""
PARTING = "parting: {prompt: So?, answer: breakfast.total.gap}\n"
AGAIN = "  - ask: {id: again, asks_again: guess}\n"


def counted(folder: Path, text: str) -> dict[str, str]:
    return {one.id: one.value for one in answers_that_count(worked(folder, text))}


ROWS = {
    "breakfast.bagel-plain_oatmeal-cooked.gap": "90",
    "breakfast.bagel-plain_oatmeal-cooked.count": "9",
    "breakfast.apple-raw_juice.gap": "30",
    "breakfast.apple-raw_juice.count": "3",
    "breakfast.total.gap": "120",
}


def test_rows_and_totals_count_and_open_questions_do_not(tmp_path: Path) -> None:
    assert counted(tmp_path, GOOD) == ROWS


def test_a_row_keeps_its_name_when_another_comes_above_it(tmp_path: Path) -> None:
    more = "      rows:\n        - [{food: pear-raw, amount: 1 medium}, {food: banana-raw, amount: 1 medium}]\n"
    moves = "moves: [march, side-step, sky-press]"
    text = GOOD.replace("      rows:\n", more).replace("moves: [march, side-step]", moves)
    assert ROWS.keys() < counted(tmp_path, text).keys()


def test_what_is_worked_out_or_not_asked_for_does_not_count(tmp_path: Path) -> None:
    worked_out = "- help: worked\n          foods: [{food: oatmeal-cooked"
    text = GOOD.replace("- [{food: oatmeal-cooked", worked_out)
    text = text.replace("solve: [gap, count, total]", "solve: [gap]")
    assert counted(tmp_path, text) == {"breakfast.apple-raw_juice.gap": "30"}


def test_a_question_with_a_right_answer_counts(tmp_path: Path) -> None:
    asked = GOOD.replace("      hint: Look", CHOICES + "      hint: Look")
    assert counted(tmp_path, asked) == {"guess.answer": "1", **ROWS}
    parted = GOOD.replace("stops:\n", PARTING + "stops:\n", 1)
    assert counted(tmp_path, parted) == {**ROWS, "parting.answer": "120"}


def test_of_a_question_that_is_asked_twice_the_second_time_counts(tmp_path: Path) -> None:
    text = GOOD.replace("      hint: Look", CHOICES + "      hint: Look") + AGAIN
    assert counted(tmp_path, text) == {**ROWS, "again.answer": "1"}
    assert asked_twice(worked(tmp_path, text)) == (AskedTwice("guess", "again"),)


def test_no_estimate_and_no_guess_before_a_change_counts(tmp_path: Path) -> None:
    """That lesson asks for both; its rows are asked for as gaps alone."""
    assert all(name.endswith(".gap") for name in counted(tmp_path, pots_lesson.LESSON))


def test_a_learner_can_be_done_with_every_stop_and_the_parting_question(tmp_path: Path) -> None:
    text = GOOD.replace("stops:\n", PARTING + "stops:\n", 1)
    stops = stops_of(worked(tmp_path, text))
    assert stops[1:3] == ("guess", "breakfast")
    assert stops[-1] == "parting"
    assert len(stops) == 6
