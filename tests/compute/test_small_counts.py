"""No hidden count can be computed from what is shown, whoever knows the rule too.

By brute force: of all small tables, those that show the same are put together; a count that is hidden
in them must not be the same in all.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from itertools import product

import pytest

from generator.compute.answered import Answered, answered
from generator.compute.learned import Learned, Verdict, learned
from generator.compute.mcnemar import FEWEST
from generator.compute.report import Report, report
from generator.compute.small_counts import Hidden, Part, Shown, part, shown
from generator.model.tally import LessonKey, Reach, RightAnswers, StopDone, Tally, Twice


def told_apart(
    tables: Iterable[tuple[int, ...]], show: Callable[[Sequence[int]], tuple[object, list[int]]]
) -> list[tuple[int, ...]]:
    """Tables of which a hidden count can be told.

    Args:
        tables: all there are.
        show: what of a table is shown, and which of its counts are hidden.
    """
    alike: dict[object, list[tuple[tuple[int, ...], list[int]]]] = defaultdict(list)
    for table in tables:
        seen, hidden = show(table)
        alike[seen].append((table, hidden))
    return [
        table
        for group in alike.values()
        for table, hidden in group
        if any(len({other[at] for other, _ in group}) < 2 for at in hidden)
    ]


@pytest.mark.parametrize("at_least", [3, 4])
@pytest.mark.parametrize("length", [1, 2, 3, 4])
def test_counts_beside_their_total(length: int, at_least: int) -> None:
    def show(table: Sequence[int]) -> tuple[object, list[int]]:
        found = shown(table, at_least)
        return found, [at for at, count in enumerate(found.counts) if count is None]

    values = (*range(1, 8), 12, 20, 40) if length < 4 else (1, 2, 3, 4, 5, 15, 30)
    tables = list(product(values, repeat=length))
    assert told_apart(tables, show) == []
    for table in tables:
        found = shown(table, at_least)
        assert all(count is None or count >= at_least for count in found.counts)
        assert all(c in (None, real) for c, real in zip(found.counts, table, strict=True))


def test_what_hidden_counts_come_to_is_never_small() -> None:
    for table in product(range(1, 8), repeat=3):
        found = shown(table, 4)
        if found.total is not None and None in found.counts:
            hidden = found.total - sum(count or 0 for count in found.counts)
            assert hidden >= 4


def test_one_small_count_takes_the_next_with_it() -> None:
    assert shown([40, 3, 12, 25], 10) == Shown((40, None, None, 25), 80)


def test_where_the_next_holds_much_the_total_is_hidden_in_its_place() -> None:
    assert shown([60, 3], 10) == Shown((60, None), None)
    assert shown([228, 124, 2], 10) == Shown((228, 124, None), None)


def test_two_nines_would_be_told_by_their_sum() -> None:
    """Eighteen, of two that are each under ten, is nine and nine."""
    assert shown([9, 9, 10, 50], 10) == Shown((None, None, None, 50), 78)
    assert shown([9, 9, 50], 10) == Shown((None, None, 50), None)
    assert shown([9, 8, 50], 10) == shown([8, 9, 50], 10) == Shown((None, None, 50), 67)


def test_a_single_small_count_hides_the_total() -> None:
    assert shown([4], 10) == shown([9], 10) == Shown((None,), None)
    assert shown([10], 10) == Shown((10,), 10)


@pytest.mark.parametrize("at_least", [3, 5, 10])
def test_a_part_and_its_rest(at_least: int) -> None:
    def show(table: Sequence[int]) -> tuple[object, list[int]]:
        found = part(table[0], table[1], at_least)
        return found, [0] if isinstance(found.count, Hidden) else []

    tables = [(count, of) for of in range(at_least, 31) for count in range(of + 1)]
    assert told_apart(tables, show) == []
    assert part(31, 40, 10) == Part(Hidden.ALL_BUT_FEW, 40)
    assert part(30, 40, 10) == Part(30, 40)
    assert part(9, 40, 10) == Part(Hidden.FEW, 40)
    assert part(9, 19, 10) == part(10, 19, 10) == Part(Hidden.UNTOLD, 19)


KEY = LessonKey("soup", "A1")


def answers(table: Sequence[int], at_least: int) -> Learned:
    return learned(Twice(KEY, "guess", *table), at_least)


@pytest.mark.parametrize("at_least", [2, 3])
def test_answers_before_and_after(at_least: int) -> None:
    """The four ways, then their margins and their sum, as far as each is hidden."""

    def show(table: Sequence[int]) -> tuple[object, list[int]]:
        found = answers(table[:4], at_least)
        hidden = [] if found.cells else [0, 1, 2, 3]
        for at, margin in ((4, found.before), (5, found.after)):
            if margin is None or isinstance(margin.count, Hidden):
                hidden.append(at)
        return found, hidden + ([6] if found.pairs is None else [])

    tables = [
        (*cells, cells[0] + cells[1], cells[0] + cells[2], sum(cells))
        for cells in product(range(19), repeat=4)
        if sum(cells) <= 18
    ]
    assert told_apart(tables, show) == []


@pytest.mark.parametrize("at_least", [2, 3, 5])
def test_under_six_changes_nothing_is_called_more_than_chance(at_least: int) -> None:
    for cells in product(range(0, 30, 3), range(6), range(6), range(0, 30, 3)):
        if cells[1] + cells[2] < FEWEST:
            assert answers(cells, at_least).verdict not in (Verdict.MORE_RIGHT, Verdict.MORE_WRONG)


def test_a_clear_gain_is_told_though_its_cells_are_hidden() -> None:
    """23 of 60 right before and 45 after: at the most 15 went from right to wrong, and 37 the other way."""
    found = answers((20, 3, 25, 12), 10)
    assert found.cells is None
    assert found.verdict is Verdict.MORE_RIGHT
    assert found.chance is not None
    assert not found.chance.one
    assert answers((23, 0, 22, 15), 10) == found


def test_verdicts() -> None:
    assert answers((20, 12, 30, 12), 10).verdict is Verdict.MORE_RIGHT
    assert answers((20, 30, 12, 12), 10).verdict is Verdict.MORE_WRONG
    assert answers((20, 12, 15, 12), 10).verdict is Verdict.CHANCE
    assert (
        answers((20, 2, 3, 15), 5).verdict is Verdict.CHANCE
    )  # whatever is hidden: 22 and 23 of 40
    assert answers((20, 2, 11, 20), 10).verdict is Verdict.HIDDEN
    assert answers((1, 1, 1, 1), 10).verdict is Verdict.HIDDEN


@pytest.mark.parametrize("at_least", [2, 3, 5])
def test_right_at_first_and_at_last(at_least: int) -> None:
    """Right at first, right later, not right, not asked, right at last: as far as each is hidden."""

    def told(table: Sequence[int]) -> Answered:
        right = RightAnswers(KEY, "gap", sum(table[:3]), *table[:2])
        return answered(right, sum(table[:4]), at_least)

    def show(table: Sequence[int]) -> tuple[object, list[int]]:
        found = told(table)
        codes, of = sum(table[:4]), found.first.of
        first, last = (isinstance(one.count, int) for one in (found.first, found.last))
        asked = of < codes  # then it tells how many were not asked
        hidden = {0: first, 1: first and last, 2: last and asked, 3: asked, 4: last}
        return (found, codes), [at for at, seen in hidden.items() if not seen]

    tables = [
        (first, later, none, left, first + later)
        for first, later, none, left in product(range(19), repeat=4)
        if at_least <= first + later + none + left <= 18
    ]
    assert told_apart(tables, show) == []
    for table in tables:
        found = told(table)
        if 0 < sum(table[:4]) - found.first.of < at_least:
            raise AssertionError(table)
        if isinstance(found.first.count, int) and isinstance(found.last.count, int):
            assert min(table[0], table[1], found.first.of - table[4]) >= at_least
        if found.missed:
            assert table[0] * 2 < found.first.of


def test_what_more_than_half_missed() -> None:
    def missed(first: int, codes: int) -> bool:
        return answered(RightAnswers(KEY, "gap", codes, first, 0), codes, 10).missed

    assert [missed(first, 60) for first in (0, 9, 10, 29, 30, 55)] == [True] * 4 + [False] * 2
    assert not missed(0, 19)  # too few to say which


def test_who_was_not_asked_is_left_out_unless_they_are_few() -> None:
    def of(asked: int) -> int:
        return answered(RightAnswers(KEY, "gap", asked, 20, 0), 60, 10).first.of

    assert [of(asked) for asked in (60, 51, 50, 30)] == [60, 60, 50, 30]
    untold = Part(Hidden.UNTOLD, 60)
    assert answered(RightAnswers(KEY, "gap", 9, 3, 0), 60, 10) == Answered("gap", untold, untold)


def test_an_answer_that_is_told_before_and_after_is_told_nowhere_else() -> None:
    """Of all codes it would tell how many of those without an answer before were right after."""
    right = tuple(RightAnswers(KEY, name, 60, 20, 12) for name in ("again.answer", "soups.gap"))
    tally = Tally((Reach(KEY, 60, 10),), (), (Twice(KEY, "guess", 12, 12, 12, 12),), right, (), ())
    known = report(tally, {}, {KEY: ("soups.gap", "parting.answer")}, 10).lessons[0]
    assert [one.answer for one in known.answers] == ["soups.gap", "parting.answer"]
    assert report(tally, {}, {}, 10).lessons[0].answers == ()  # nobody knows which is which
    alone = report(replace(tally, twice=()), {}, {}, 10).lessons[0]
    assert [one.answer for one in alone.answers] == ["again.answer", "soups.gap"]
    none = report(replace(tally, right=()), {}, {KEY: ("soups.gap",)}, 10).lessons[0]
    assert none.answers == ()


def one_report(table: Sequence[int], at_least: int) -> Report:
    """Two lessons, the first with a stop that some have done."""
    first, second, done = table
    other = LessonKey("walk", "B2")
    reach = (Reach(KEY, first, 10), Reach(other, second, 5))
    stops = (StopDone(KEY, "hello", done),) if done else ()
    return report(Tally(reach, stops, (), (), (), ()), {"soup": ("hello",)}, {}, at_least)


def test_a_lesson_that_is_hidden_tells_nothing_of_its_stops() -> None:
    def show(table: Sequence[int]) -> tuple[object, list[int]]:
        found = one_report(table, 3)
        hidden = [at for at, one in enumerate(found.lessons) if one.codes is None]
        stops = found.lessons[0].stops
        return found, [*hidden, *([] if stops and isinstance(stops[0].done.count, int) else [2])]

    tables = [
        (first, second, done)
        for first, second in product(range(1, 10), repeat=2)
        for done in range(first + 1)
    ]
    apart = told_apart(tables, show)
    assert apart == []
    assert one_report((4, 30, 4), 10).lessons[0].stops == ()
    assert one_report((22, 14, 11), 10).lessons[0].stops[0].done == Part(11, 22)
    assert one_report((22, 14, 0), 10).lessons[0].stops[0].done == Part(Hidden.FEW, 22)
