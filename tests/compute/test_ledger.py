"""One ledger: every number of a lesson once, by names that do not come from a place."""

from __future__ import annotations

import re
from pathlib import Path
from random import Random

import pytest

from generator.compute.answers import PARTING
from generator.compute.changed import WhatIf
from generator.compute.result import LessonResult
from generator.compute.showing import shown_at
from generator.compute.work_out import work_out
from generator.model.figure import FigureKind
from generator.model.texts import in_language
from tests.project import GOOD, library, problems, worked
from tests.site_data.test_lessons import RESULTS

ROWS = re.findall(r" +- \[.*\]\n", GOOD)


@pytest.mark.parametrize("name", RESULTS)
def test_every_number_of_a_demo_lesson_has_a_name_of_its_own(name: str) -> None:
    ids = [figure.id for figure in RESULTS[name].figures]
    assert len(ids) == len(set(ids))
    assert not [one for one in ids if re.search(r"row-\d|card-\d|food-\d|first|second", one)]


@pytest.mark.parametrize("name", RESULTS)
def test_a_number_belongs_to_a_stop_of_its_lesson_and_the_ledger_keeps_their_order(
    name: str,
) -> None:
    """Answers come last: a question may ask for a number of a stop below it."""
    result = RESULTS[name]
    stops = [*(ids.stop for ids in result.lesson.ids), PARTING]
    answers = [figure.kind is FigureKind.ANSWER for figure in result.figures]
    assert answers == sorted(answers)
    for wanted in (False, True):
        places = [
            stops.index(one.stop)
            for one in result.figures
            if (one.kind is FigureKind.ANSWER) is wanted
        ]
        assert places == sorted(places)


def values(result: LessonResult) -> dict[str, object]:
    return {figure.id: (figure.value, figure.exact, figure.unit) for figure in result.figures}


def test_rows_in_any_order_have_the_same_numbers_by_the_same_names(tmp_path: Path) -> None:
    there = values(worked(tmp_path, GOOD))
    turned = GOOD.replace("".join(ROWS), "".join(reversed(ROWS)))
    assert turned != GOOD
    assert values(worked(tmp_path, turned)) == there


def test_a_row_more_renames_no_number(tmp_path: Path) -> None:
    """Forty lessons of some of these rows: what is there is called and worked out as before."""
    foods = ("apple-raw", "pear-raw", "banana-raw", "orange-raw", "plum-raw")
    every = [
        f"        - [{{food: {one}, amount: 100 g}}, {{food: {other}, amount: 150 g}}]\n"
        for one in foods
        for other in foods
        if one < other
    ]
    known: dict[str, object] = {}
    random = Random(5)  # noqa: S311  # nothing secret: the same rows at every run
    for _ in range(40):
        some = random.sample(every, random.randint(1, 6))
        text = GOOD.replace("".join(ROWS), "".join(some))
        text = text.replace("[march, side-step]", f"[{', '.join(['march'] * len(some))}]")
        for name, value in values(worked(tmp_path, text)).items():
            if ".total." not in name:
                assert known.setdefault(name, value) == value, name


def test_a_translation_has_the_same_ledger() -> None:
    result = RESULTS["river-walk"]
    spanish = in_language(result.lesson, "es", lambda text: f"?{text}", str)
    assert values(work_out(spanish, library())) == values(result)


def test_a_row_of_the_lesson_file_may_be_named(tmp_path: Path) -> None:
    named = GOOD.replace(ROWS[0], ROWS[0].replace("- [", "- {id: oats, foods: [")[:-1] + "}\n")
    ids = {figure.id for figure in worked(tmp_path, named).figures}
    assert {"breakfast.oats.at-home", "breakfast.oats.gap", "breakfast.oats.count"} <= ids


AGAIN = """\
  - move:
      for: breakfast
      id: again
      one_move_per: STEP
      moves: [wall-push, march]
"""


def with_a_second_move_stop(step: str) -> str:
    return GOOD.replace("  - talk:", AGAIN.replace("STEP", step) + "  - talk:")


def test_two_move_stops_that_count_in_different_steps_are_refused(tmp_path: Path) -> None:
    [found] = problems(tmp_path, with_a_second_move_stop("20"))
    assert found.what == "`breakfast` is counted in steps of 10 on line 27, and of 20 here"
    assert str(found.place) == "lessons/meal/lesson.yaml:32:21"
    assert "the same `one_move_per`" in found.hint


def test_two_move_stops_of_one_step_show_the_same_counts(tmp_path: Path) -> None:
    result = worked(tmp_path, with_a_second_move_stop("10"))
    once = [counted.count for counted in result.movements["move-breakfast"].counts]
    assert [counted.count for counted in result.movements["again"].counts] == once
    counts = result.comparisons["breakfast"].counts
    assert counts is not None
    assert list(counts.rows) == once
    shown = {
        stop: [
            one.figure.value
            for one in shown_at(result, stop)
            if one.figure.kind is FigureKind.COUNT and one.figure.row != "total"
        ]
        for stop in ("breakfast", "move-breakfast", "again")
    }
    assert [*shown.values()] == [[9, 3]] * 3


def test_the_foods_of_a_lesson_are_those_of_its_numbers() -> None:
    for result in RESULTS.values():
        held = [held for one in result.comparisons.values() for held in one.holdings]
        eaten = [held for day in result.days.values() for held in day.eaten]
        new = [
            held
            for one in result.of(WhatIf).values()
            for change in one.changes
            for held in change.new
        ]
        assert sorted(map(id, result.holdings)) == sorted(map(id, (*held, *eaten, *new)))
