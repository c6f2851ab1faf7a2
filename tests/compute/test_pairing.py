"""Each proposed row has what was asked, and a lesson made of it checks clean."""

from __future__ import annotations

import tempfile
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest
import yaml
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from generator.author.instead import instead
from generator.author.pair_wishes import Typed, WishError, most_counts, read_wishes
from generator.author.pairs import proposed, row_lines
from generator.check import check_lesson
from generator.compute.offers import left_out, offers
from generator.compute.pair_wishes import PairWishes, Wish
from generator.compute.pairing import Pair, pairs
from generator.compute.result import Comparison
from generator.compute.trading import Trading, trading
from generator.compute.well_known import well_known
from generator.model.food import NOT_LOOKED_AT, Allergen
from generator.model.grades import parse_grades
from generator.model.measure import Measure
from tests.project import library, worked

LIBRARY = library()
_THIRD = sorted({*sorted(LIBRARY.foods)[::3], "apple-raw", "milk-whole", "cola"})
SOME = replace(LIBRARY, foods={name: LIBRARY.foods[name] for name in _THIRD})
"""A third of the foods: every group is among them, and a wish is looked through in a moment."""
GROUPS = sorted({food.entry.group for food in LIBRARY.foods.values()})
LESSON = """\
title: Two sides
summary: Find the gap.
grades: GRADES
minutes: 10
goals: [Subtract.]
stops:
  - compare:
      id: rows
      measure: MEASURE
      sides: [Here, There]
      rows:
ROWS
      solve: [SOLVE]
MOVE"""


@st.composite
def wishes(draw: st.DrawFn) -> PairWishes:
    """Anything that can be typed, much of it impossible."""
    grades = parse_grades(draw(st.sampled_from(["K-2", "3-5", "4", "6-8"])))
    measure = draw(st.sampled_from([*Measure]))
    least = draw(st.integers(0, 200))
    gap = (Decimal(least), Decimal(least + draw(st.integers(0, 200))))
    per = draw(st.sampled_from([None, 1, 2, 5, 10, 25]))
    left = draw(st.sampled_from([None, 0, per - 1])) if per else None
    return PairWishes(
        measure=measure,
        gap=draw(st.sampled_from([None, gap])),
        grades=grades,
        trading=draw(st.sampled_from([None, *Trading])),
        per=None if per is None else Decimal(per),
        most_counts=most_counts(LIBRARY, grades),
        left=None if left is None else Decimal(left),
        groups=frozenset(draw(st.sets(st.sampled_from(GROUPS), max_size=3))),
        without=frozenset(draw(st.sets(st.sampled_from([*Allergen]), max_size=3))),
        wanted=draw(st.sampled_from([None, None, "apple-raw", "milk-whole"])),
    )


def lesson(asked: PairWishes, rows: list[str], moves: list[str]) -> str:
    text = LESSON.replace("GRADES", f'"{asked.grades}"').replace("MEASURE", asked.measure)
    text = text.replace("ROWS", "\n".join(rows))
    if asked.per is None:
        return text.replace("SOLVE", "gap").replace("MOVE", "")
    move = f"  - move: {{for: rows, one_move_per: {asked.per}, moves: [{', '.join(moves)}]}}\n"
    return text.replace("SOLVE", "gap, count").replace("MOVE", move)


@settings(suppress_health_check=[HealthCheck.too_slow], max_examples=60)
@given(wishes())
def test_each_row_has_what_was_asked_and_checks_clean(asked: PairWishes) -> None:
    chosen, number = proposed(SOME, asked, 4)
    assert len(chosen) == min(4, number)
    if not chosen:
        return
    caps = {name: move.caps.for_band(asked.grades.band) for name, move in LIBRARY.moves.items()}  # type: ignore[union-attr]  # given in every wish here
    most = max(caps, key=lambda name: caps[name])
    for pair in chosen:
        text = lesson(asked, [row_lines(pair, LIBRARY, asked)[1]], [most])
        with tempfile.TemporaryDirectory() as folder:
            result = worked(Path(folder), text)
        assert list(map(str, check_lesson(result))) == []
        has_what_was_asked(result.comparisons["rows"], pair, asked, caps[most])


def has_what_was_asked(comparison: Comparison, pair: Pair, asked: PairWishes, cap: int) -> None:
    """Each wish, held against the lesson that was made of the row."""
    (row,) = comparison.rows
    foods = [held.food for held in row.sides if held.food]
    small, large = sorted(held.shown.value for held in row.sides)
    assert asked.gap is None or asked.gap[0] <= row.gap.size <= asked.gap[1]
    assert row.gap.size == pair.gap.size > 0
    assert trading(int(large * 10), int(small * 10)) is pair.trading
    assert asked.trading in {None, pair.trading}
    assert not asked.groups or {food.entry.group for food in foods} <= asked.groups
    assert not asked.without & {one for food in foods for one in food.entry.contains}
    assert asked.wanted is None or asked.wanted in {food.id for food in foods}
    if comparison.counts:
        (count,) = comparison.counts.rows
        assert count == pair.count
        assert 1 <= count.whole <= cap
        assert asked.left in {None, count.left_over}


@settings(suppress_health_check=[HealthCheck.too_slow], max_examples=10)
@given(wishes())
def test_what_would_have_to_give_gives_what_it_says(asked: PairWishes) -> None:
    """Counted again, every pair of two portions looked at; nothing is left out of the ways."""
    if proposed(SOME, asked, 1)[1]:
        return
    ways = instead(SOME, asked)
    offered = offers(SOME.foods.values(), asked.measure)
    single = {}
    for wish in asked.said:
        if rows := len(list(pairs(offered, asked.given_up(wish)))):
            single[(wish,)] = rows
    told = {way.wishes: way.rows for way in ways}
    assert (told == single) if single else all(len(names) == 2 for names in told)
    assert [way.rows for way in ways] == sorted(told.values(), reverse=True)


def test_an_impossible_wish() -> None:
    """Tens alone are taken from tens where 10 goes into the gap: no ten is ever traded past a 0."""
    asked = PairWishes(
        Measure.ENERGY,
        gap=(Decimal(100), Decimal(400)),
        grades=parse_grades("3-5"),
        trading=Trading.ZERO,
        per=Decimal(10),
        most_counts=50,
        left=Decimal(0),
    )
    assert proposed(LIBRARY, asked, 5) == ((), 0)
    ways = {way.wishes for way in instead(LIBRARY, asked)}
    assert ways == {(Wish.TRADING,), (Wish.PER,), (Wish.LEFT,)}


def test_two_wishes_are_given_up_where_one_is_not_enough() -> None:
    asked = PairWishes(
        Measure.ENERGY, gap=(Decimal(9000), Decimal(9001)), groups=frozenset({"fruit"}),
        trading=Trading.ZERO, wanted="cola",
    )  # fmt: skip
    ways = instead(LIBRARY, asked)
    assert ways
    assert all(len(way.wishes) == 2 for way in ways)
    assert (Wish.GAP, Wish.WITH) in {way.wishes for way in ways}


def test_every_pair_is_looked_at() -> None:
    """Against the plain way: each two portions of two foods whose values differ."""
    foods = [food for food in LIBRARY.foods.values() if food.entry.group == "fruit"]
    offered = offers(foods, Measure.FIBER)
    asked = PairWishes(Measure.FIBER, gap=(Decimal(2), Decimal(3)))
    plain = {
        frozenset({(a.food.id, a.amount), (b.food.id, b.amount)})
        for a in offered
        for b in offered
        if a.food is not b.food and a.value and b.value and 2 <= abs(a.value - b.value) <= 3
    }
    found = list(pairs(offered, asked))
    assert {frozenset((one.food.id, one.amount) for one in pair.sides) for pair in found} == plain
    assert len(found) == len(plain) > 100


def test_what_no_lesson_may_show_is_left_out() -> None:
    """Raw foods that are eaten cooked, and foods whose allergens nobody has looked at."""
    apple = LIBRARY.foods["apple-raw"]
    raw = replace(apple, id="raw", entry=apple.entry.model_copy(update={"raw": True}))
    unknown = apple.entry.model_copy(update={"allergens": NOT_LOOKED_AT})
    foods = [apple, raw, replace(apple, id="unknown", entry=unknown)]
    assert {one.food.id for one in offers(foods, Measure.ENERGY)} == {"apple-raw"}
    assert left_out(foods) == (raw, foods[2])


@pytest.mark.parametrize("allergen", Allergen)
def test_no_row_of_all_holds_an_allergen_that_is_left_out(allergen: Allergen) -> None:
    offered = offers(SOME.foods.values(), Measure.PROTEIN)
    asked = PairWishes(Measure.PROTEIN, without=frozenset({allergen}))
    foods = {side.food.id: side.food for pair in pairs(offered, asked) for side in pair.sides}
    assert len(foods) > 50
    assert not any(allergen in food.entry.contains for food in foods.values())


def test_a_food_that_is_left_out_cannot_be_wanted() -> None:
    apple = LIBRARY.foods["apple-raw"]
    raw = replace(apple, entry=apple.entry.model_copy(update={"raw": True}))
    foods = replace(LIBRARY, foods={**LIBRARY.foods, "apple-raw": raw})
    typed = Typed("energy", "", "3-5", "", "", "", "", "", wanted="apple-raw")
    with pytest.raises(WishError, match="`apple-raw` is left out"):
        read_wishes(foods, typed)
    assert read_wishes(LIBRARY, typed).wanted == "apple-raw"


def test_each_food_stands_in_one_row() -> None:
    chosen, _ = proposed(LIBRARY, PairWishes(Measure.ENERGY), 20)
    foods = [side.food.id for pair in chosen for side in pair.sides]
    assert len(set(foods)) == 40


def test_the_best_known_come_first() -> None:
    """Our own order: apple comes back in other names, amaranth does not."""
    known = well_known(LIBRARY.foods.values())
    assert known["apple-raw"] < known["amaranth-cooked"] < known["almond-milk-unsweetened"]


@pytest.mark.parametrize("wish", Wish)
def test_a_wish_that_is_given_up_is_gone(wish: Wish) -> None:
    full = PairWishes(
        Measure.ENERGY, (Decimal(1), Decimal(9)), parse_grades("3-5"), Trading.NONE, Decimal(2), 50,
        Decimal(1), frozenset({"fruit"}), frozenset({Allergen.MILK}), "cola",
    )  # fmt: skip
    assert full.said == tuple(Wish)
    gone = {wish, Wish.LEFT} if wish is Wish.PER else {wish}
    assert set(full.given_up(wish).said) == set(Wish) - gone
    assert replace(full, left=Decimal(0)).said == tuple(Wish)  # nothing left over is a wish too


@given(st.sampled_from(sorted(LIBRARY.foods)))
def test_a_row_reads_as_yaml(name: str) -> None:
    chosen, _ = proposed(LIBRARY, PairWishes(Measure.ENERGY, wanted=name), 1)
    for pair in chosen:
        comment, line = row_lines(pair, LIBRARY, PairWishes(Measure.ENERGY))
        assert comment.strip().startswith("# ")
        (row,) = yaml.safe_load(line)
        assert [(one["food"], one["amount"]) for one in row] == [
            (side.food.id, side.amount) for side in pair.sides
        ]
