"""What is wrong with a what-if stop is told at its place, with a way out."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.model.lesson import Lesson
from tests.project import problems, read

LESSON = """\
title: Two pots
summary: Find the gap.
grades: 3-5
minutes: 10
stops:
  - compare:
      id: pots
      measure: fiber
      sides: [Rosa's pot, Ilyas's pot]
      rows:
        - [{food: lentils-boiled, amount: 1 cup}, {food: rice-white-cooked, amount: 1 cup}]
        - {id: grain, foods: [{food: barley-cooked, amount: 1 cup}, {food: rice-white-cooked, amount: 1 cup}]}
        - [{name: Bread of the hall, value: 3, source: card}, {food: lentils-boiled, amount: 1 cup}]
  - what_if:
      for: pots
      changes:
        - {change: barley-cooked, to: {food: pasta-cooked, amount: 1 cup elbows}}
        - {change: Bread of the hall, leave_out: true}
"""
BARLEY = "{change: barley-cooked, to: {food: pasta-cooked, amount: 1 cup elbows}}"
BREAD = "{change: Bread of the hall, leave_out: true}"
TO = "to: {food: pasta-cooked, amount: 1 cup elbows}"


def told(folder: Path, old: str, new: str) -> list[str]:
    """What is said of the lesson with one text changed: line, column, sentence and way out."""
    assert old in LESSON
    found = problems(folder, LESSON.replace(old, new))
    return [f"{one.place.line}:{one.place.column}: {one.what}: {one.hint}" for one in found]


def test_nothing_is_wrong_with_it(tmp_path: Path) -> None:
    assert isinstance(read(tmp_path, LESSON), Lesson)


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("for: pots", "for: pot", "15:12: no compare stop has the id `pot`: did you mean `pots`?"),
        (
            "change: barley-cooked",
            "change: barley-cook",
            "17:20: no row of `pots` holds `barley-cook`: did you mean `barley-cooked`?",
        ),
        (
            "change: Bread of the hall",
            "change: Bread of the hill",
            "18:20: no row of `pots` holds `Bread of the hill`: did you mean `bread-of-the-hall`?",
        ),
        (
            "change: barley-cooked",
            "change: rice-white-cooked",
            (
                "17:20: `rice-white-cooked` stands 2 times in `pots`: say which one is changed: "
                "`row:` with `lentils-boiled_rice-white-cooked` or `grain`"
            ),
        ),
        (
            "change: barley-cooked",
            "change: lentils-boiled",
            (
                "17:20: `lentils-boiled` stands 2 times in `pots`: say which one is changed: "
                "`row:` with `lentils-boiled_rice-white-cooked` or "
                "`bread-of-the-hall_lentils-boiled` and `side:` with `Rosa's pot` or `Ilyas's pot`"
            ),
        ),
        (
            "change: barley-cooked",
            "change: barley-cooked, row: grains",
            "17:40: no row of `pots` is called `grains`: did you mean `grain`?",
        ),
        (
            "change: barley-cooked",
            "change: barley-cooked, side: Omar's pot",
            "17:41: no side of `pots` is called `Omar's pot`: it can be `Rosa's pot` or `Ilyas's pot`",
        ),
        (
            "change: barley-cooked",
            "change: barley-cooked, side: Ilyas's pot",
            "17:20: no row of `pots` holds `barley-cooked` there: look at `side`, or leave it out",
        ),
        ("food: pasta-cooked", "food: pasta-cooke", "17:46: there is no food `pasta-cooke` in"),
        ("1 cup elbows", "1 bowl", "17:68: `1 bowl` is no portion of `pasta-cooked`: write "),
        (f", {TO}", "", "17:11: entry 1 of `changes` does not say what the food becomes: add `to:"),
        (
            "leave_out: true",
            f"leave_out: true, {TO}",
            "18:11: entry 2 of `changes` leaves the food out and puts another there: keep",
        ),
        (
            f"        - {BREAD}\n",
            "",
            "17:9: `changes` has too few entries: it needs at least 2",
        ),
        (BREAD, BARLEY, "18:11: changes 1 and 2 are the same: take one of them out"),
        (
            BREAD,
            BARLEY.replace("{change", "{id: again, change"),
            "18:11: changes 1 and 2 are the same: take one of them out",
        ),
        (
            TO,
            f"{TO}, and: {{food: pasta-cooked, amount: 100 g}}",
            "17:88: `to:` and `and:` of change 1 are the same food: write it once",
        ),
        (
            "changes:",
            "change:",
            "16:7: `change` is not a key that belongs here: did you mean `changes`?",
        ),
    ],
)
def test_a_mistake_has_its_place_and_a_way_out(
    tmp_path: Path, old: str, new: str, said: str
) -> None:
    found = told(tmp_path, old, new)
    assert len(found) == 1, found
    assert found[0].startswith(said), found


def test_two_changes_of_one_id(tmp_path: Path) -> None:
    named = LESSON.replace("- {change", "- {id: swap, change")
    (found,) = problems(tmp_path, named)
    assert (found.place.line, found.what) == (18, "the id `swap` is taken by change 1")


def test_more_than_six_changes(tmp_path: Path) -> None:
    more = "".join(
        f"        - {BARLEY.replace('1 cup elbows', f'{grams} g')}\n" for grams in range(10, 16)
    )
    (found,) = problems(tmp_path, LESSON + more)
    assert (found.place.line, found.what) == (
        23,
        "`changes` has 8 entries, and at most 6 are taken",
    )


def test_a_comparison_that_stands_below(tmp_path: Path) -> None:
    head, compare, what_if = (
        LESSON.partition("  - compare")[0],
        "  - compare" + LESSON.partition("  - compare")[2].partition("  - what_if")[0],
        "  - what_if" + LESSON.partition("  - what_if")[2],
    )
    (found,) = problems(tmp_path, head + what_if + compare)
    assert found.what == "`pots` stands below this stop"
    assert found.place.line == 7


def test_what_is_wrong_with_the_comparison_hides_no_food_of_a_change(tmp_path: Path) -> None:
    found = problems(
        tmp_path,
        LESSON.replace("measure: fiber", "measure: fibre").replace("pasta-cooked", "pasta-coked"),
    )
    assert [one.place.line for one in found] == [8, 17]


def test_a_food_that_is_misspelled_in_the_comparison_is_told_once(tmp_path: Path) -> None:
    (only,) = told(tmp_path, "foods: [{food: barley-cooked", "foods: [{food: barley-cookd")
    assert "there is no food `barley-cookd`" in only
