"""What a changed food does to a gap, against sums of label values that are worked out another way."""

from __future__ import annotations

from dataclasses import replace
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

import pytest
import yaml

from generator.compute.changed import WhatIf
from generator.compute.gap import Gap
from generator.compute.result import LessonResult
from generator.compute.showing import shown_at
from generator.compute.what_if import Reason, Way, closest, even, likely_guesses, way_of
from generator.compute.work_out import work_out
from generator.model.figure import FigureKind
from generator.model.texts import in_language
from generator.model.translation import Translation
from tests.site_project import ROOT
from tests.stop_examples import example_of
from tests.worked import library, worked

FOODS = yaml.safe_load((ROOT / "site_data/foods.yaml").read_text("utf-8"))["foods"]
POTS = """\
- compare:
    id: pots
    measure: fiber
    sides: [Rosa's pot, Ilyas's pot]
    rows:
      - [{food: lentils-boiled, amount: 1 cup}, {food: rice-white-cooked, amount: 1 cup}]
      - [{food: pasta-cooked, amount: 1 cup elbows}, {food: barley-cooked, amount: 1 cup}]
      - [{food: chickpeas-boiled, amount: 1 cup}, {food: split-peas-boiled, amount: 1 cup}]
      - [{food: black-beans-boiled, amount: 1 cup}, {food: pinto-beans-boiled, amount: 1 cup}]
- what_if:
    id: swap
    for: pots
    changes:
      - {change: rice-white-cooked, to: {food: barley-cooked, amount: 1 cup}}
      - {change: chickpeas-boiled, to: {food: black-beans-boiled, amount: 1 cup}}
      - {change: lentils-boiled, to: {food: lentils-boiled, amount: 1/2 cup}}
      - {change: pinto-beans-boiled, to: {food: black-beans-boiled, amount: 1 cup}}
      - {change: pasta-cooked, leave_out: true}
"""
RICE = "rice-white-cooked_barley-cooked"


def gap(first: int, second: int) -> Gap:
    return Gap(Decimal(first), Decimal(second), Fraction(first - second))


def on_a_label(food: str, measure: str, times: str = "1") -> int:
    """A first portion as a label shows it, by 21 CFR 101.9(c)(4) and (c)(6)(i), in decimals."""
    entry = FOODS[food]
    grams = Decimal(str(entry["portions"][0]["grams"])) * Decimal(times)
    held = Decimal(str(entry["per_100g"][measure])) * grams / 100
    if measure == "fiber":  # to the gram, less than half of one is none
        return int(held.quantize(Decimal(1), ROUND_HALF_UP))
    step = 10 if held > 140 else 5 if held >= 5 else 0  # sodium: by 5 up to 140 mg, then by 10
    return int((held / step).quantize(Decimal(1), ROUND_HALF_UP)) * step if step else 0


@pytest.mark.parametrize(
    ("before", "after", "way"),
    [
        ((45, 38), (45, 43), Way.SMALLER),
        ((45, 38), (45, 45), Way.SMALLER),  # even is the smallest there is
        ((45, 38), (48, 38), Way.LARGER),
        ((45, 45), (45, 46), Way.LARGER),
        ((45, 38), (45, 38), Way.SAME),
        ((45, 45), (45, 45), Way.SAME),
        ((45, 38), (37, 38), Way.OVER),
        ((38, 45), (38, 31), Way.OVER),  # as far apart as before, on the other side
        ((45, 38), (45, 90), Way.OVER),
    ],
)
def test_which_way_a_gap_goes(before: tuple[int, int], after: tuple[int, int], way: Way) -> None:
    assert way_of(gap(*before), gap(*after)) is way


def test_which_change_brings_the_sides_closest_and_which_makes_them_even() -> None:
    before = gap(45, 38)
    after = [gap(45, 43), gap(48, 38), gap(37, 38), gap(45, 46)]
    assert closest(before, after) == (2, 3)
    assert even(after) == ()
    assert even([*after, gap(45, 45)]) == closest(before, [*after, gap(45, 45)]) == (4,)
    assert closest(before, [gap(45, 38), gap(48, 38)]) == ()  # no closer than they are now


@pytest.mark.parametrize(
    ("before", "after", "side", "likely"),
    [
        # the side that held less grew
        ((45, 38), (45, 43), 1, {Way.LARGER: Reason.ONE_SIDE_GREW}),
        # it grew past the other
        (
            (45, 38),
            (45, 50),
            1,
            {Way.LARGER: Reason.ONE_SIDE_GREW, Way.SMALLER: Reason.CLOSER_FIRST},
        ),
        # the side that held more shrank below the other
        ((45, 38), (37, 38), 0, {Way.SMALLER: Reason.ONE_SIDE_SHRANK}),
        # the side that held less shrank
        ((45, 38), (45, 30), 1, {Way.SMALLER: Reason.ONE_SIDE_SHRANK}),
        # what is true is no likely mistake
        ((45, 38), (48, 38), 0, {}),
        ((45, 38), (40, 38), 0, {}),
        ((45, 38), (45, 38), 0, {}),
    ],
)
def test_guesses_to_expect(
    before: tuple[int, int], after: tuple[int, int], side: int, likely: dict[Way, Reason]
) -> None:
    gaps = (gap(*before), gap(*before)), (gap(*after), gap(*after))
    found = likely_guesses(*gaps, side)
    assert {guess.way: guess.reason for guess in found} == likely


def test_a_row_that_goes_over_while_the_totals_do_not() -> None:
    found = likely_guesses((gap(16, 1), gap(45, 38)), (gap(0, 1), gap(39, 38)), 0)
    assert [(one.way, one.reason) for one in found] == [(Way.OVER, Reason.ONE_ROW)]


def values(result: LessonResult) -> dict[str, Decimal]:
    return {figure.id: figure.value for figure in result.figures if figure.stop == "swap"}


def test_every_number_of_a_change_in_fiber() -> None:
    label = {
        food: on_a_label(food, "fiber")
        for food in [
            "lentils-boiled",
            "rice-white-cooked",
            "pasta-cooked",
            "barley-cooked",
            "chickpeas-boiled",
            "split-peas-boiled",
            "black-beans-boiled",
            "pinto-beans-boiled",
        ]
    }
    rosa, ilyas = 16 + 2 + 12 + 15, 1 + 6 + 16 + 15  # added up by hand
    assert rosa == sum(list(label.values())[0::2])
    assert ilyas == sum(list(label.values())[1::2])
    half = on_a_label("lentils-boiled", "fiber", "0.5")
    black = label["black-beans-boiled"]
    totals = {
        RICE: (rosa, ilyas - 1 + 6),
        "chickpeas-boiled_black-beans-boiled": (rosa - 12 + black, ilyas),
        "lentils-boiled_lentils-boiled": (rosa - 16 + half, ilyas),
        "pinto-beans-boiled_black-beans-boiled": (rosa, ilyas - 15 + black),
        "pasta-cooked_left-out": (rosa - 2, ilyas),
    }
    expected = {
        f"swap.{RICE}.barley-cooked": 6,
        "swap.chickpeas-boiled_black-beans-boiled.black-beans-boiled": black,
        "swap.lentils-boiled_lentils-boiled.lentils-boiled": half,
        "swap.pinto-beans-boiled_black-beans-boiled.black-beans-boiled": black,
    }
    for name, (first, second) in totals.items():
        expected[f"swap.{name}.total"] = second if name.startswith(("rice", "pinto")) else first
        expected[f"swap.{name}.gap"] = abs(first - second)
    result = worked(POTS)
    assert values(result) == expected
    ways = [
        way_of(one.comparison.total, change.total)
        for one in result.of(WhatIf).values()
        for change in one.changes
    ]
    assert ways == [Way.SMALLER, Way.LARGER, Way.OVER, Way.SAME, Way.SMALLER]


def test_one_food_for_two_and_a_food_left_out_in_sodium() -> None:
    result = worked(example_of("what_if"))
    broth, tomato = "soup-chicken-broth", "soup-tomato-canned"
    now = on_a_label(broth, "sodium") + 130, on_a_label(tomato, "sodium") + 140
    assert now == (920 + 130, 460 + 140)  # by hand: 371 × 249 ÷ 100, 186 × 248 ÷ 100
    half = on_a_label(broth, "sodium", "0.5") + 0
    (changes,) = [one.changes for one in result.of(WhatIf).values()]
    assert [(one.total.first, one.total.second) for one in changes] == [
        (half + 130, now[1]),
        (now[0] - 130, now[1]),
        (now[0], on_a_label(tomato, "sodium", "2") + 140),
    ]
    assert [one.total.exact for one in changes] == [
        sum(figure.exact for figure in result.figures if figure.id.endswith(f".{one.id}.gap"))
        * (1 if one.total.first > one.total.second else -1)
        for one in changes
    ]


def test_names_stay_when_changes_and_rows_are_moved() -> None:
    lines = POTS.splitlines(keepends=True)
    rows, changes = slice(5, 9), slice(13, 18)
    turned = [*lines]
    turned[rows], turned[changes] = lines[rows][::-1], lines[changes][::-1]
    assert values(worked("".join(turned))) == values(worked(POTS))


def test_a_change_may_have_a_name_and_two_alike_are_told_apart_by_their_amounts() -> None:
    more = "{change: rice-white-cooked, to: {food: barley-cooked, amount: 1 cup}}"
    named = POTS.replace(more, more.replace("{change", "{id: grain, change"))
    assert "swap.grain.gap" in values(worked(named))
    twice = POTS.replace(more, f"{more}\n      - {more.replace('1 cup', '2 cups')}")
    ids = values(worked(twice))
    assert {f"swap.{RICE}-1-cup.gap", f"swap.{RICE}-2-cups.gap"} <= ids.keys()


def test_a_food_that_stands_twice_is_named_by_its_row_or_its_side() -> None:
    same = POTS.replace(
        "pinto-beans-boiled, amount: 1 cup}", "black-beans-boiled, amount: 1 cup}"
    ).replace("change: pinto-beans-boiled, to", "change: black-beans-boiled, side: SIDE, to")
    for number, side in enumerate(("Rosa's pot", "Ilyas's pot", "ilyas-s-pot")):
        (what_if,) = worked(same.replace("SIDE", side)).of(WhatIf).values()
        assert (what_if.changes[3].row, what_if.changes[3].side) == (3, min(number, 1))


def test_a_translation_has_the_same_numbers_by_the_same_names() -> None:
    result = worked(POTS)
    beside = {"es": Translation("es", {}, {}, result.lesson.places)}
    lesson = replace(result.lesson, translations=beside)
    spanish = in_language(lesson, "es", lambda text: f"?{text}", str)
    assert values(work_out(spanish, library())) == values(result)


def test_the_numbers_of_a_change_are_shown_at_their_own_stop_with_their_side() -> None:
    result = worked(POTS)
    shown = [one for one in shown_at(result, "swap") if one.figure.change == RICE]
    assert [(one.figure.kind, one.side) for one in shown] == [
        (FigureKind.HOLDS, "ilyas-s-pot"),
        (FigureKind.TOTAL, "ilyas-s-pot"),
        (FigureKind.GAP, ""),
    ]
