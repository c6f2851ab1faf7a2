"""The demo lessons: clean, kind, and of one number on page, slide, script and caption."""

from __future__ import annotations

import re
from collections.abc import Iterator
from decimal import Decimal
from itertools import pairwise

import pytest

from generator.check import check_lesson
from generator.compute.day import Lean
from generator.compute.gap import Gap
from generator.compute.mistakes import Mistake, gap_answers
from generator.compute.result import LessonResult
from generator.compute.timeline import pause_points, spans
from generator.model.captions import DRAFT_NOTE
from generator.model.lesson import Lesson
from generator.model.measure import Measure
from generator.model.stops.compare import CompareStop, Help
from generator.model.stops.move import MoveStop
from generator.present.recording.captions import caption_draft
from generator.present.recording.spoken import paragraphs, spoken
from generator.read.lesson import read_lesson
from generator.steps.filled import worked_out
from tests.project import ROOT, library

CUPS = ("milk-whole", "milk-chocolate", "lemonade", "water-tap")
NAMES = ("river-walk", "market-drinks", "soup-night", "bean-stew", "two-days", "garden-baskets")


def worked(name: str) -> LessonResult:
    lesson = read_lesson(ROOT, f"lessons/{name}/lesson.yaml", library())
    assert isinstance(lesson, Lesson), list(map(str, lesson))
    return worked_out(lesson, library())


RESULTS = {name: worked(name) for name in NAMES}
each_lesson = pytest.mark.parametrize("result", RESULTS.values(), ids=RESULTS)


def gaps(result: LessonResult) -> list[Gap]:
    return [row.gap for comparison in result.comparisons.values() for row in comparison.rows]


@each_lesson
def test_nothing_is_wrong_or_questionable(result: LessonResult) -> None:
    assert [str(problem) for problem in check_lesson(result)] == []


def test_each_lesson_is_of_another_shape() -> None:
    kinds = [tuple(stop.kind for stop in result.lesson.file.stops) for result in RESULTS.values()]
    assert len(set(kinds)) == len(kinds)
    measures = {
        name: {comparison.stop.measure for comparison in result.comparisons.values()}
        for name, result in RESULTS.items()
    }
    assert measures["market-drinks"] == {Measure.SUGARS}
    assert measures["soup-night"] == {Measure.SODIUM}
    assert measures["bean-stew"] == {Measure.FIBER}
    assert [name for name, result in RESULTS.items() if result.days] == ["two-days"]


def test_one_day_is_about_even_and_the_other_leans() -> None:
    """Gave: SR Legacy 2018-04, portions weighed and rounded by 21 CFR 101.9(c)(1) by hand.

    Took: NASEM 2023, women of 19 and over (references.md 2.1, S) with the reference woman of IOM
    2005, 163 cm and 57 kg (M): low active 575.77 - 7.01 × 40 + 6.60 × 163 + 12.14 × 57 = 2,063;
    very active 511.83 - 7.01 × 40 + 9.07 × 163 + 12.56 × 57 = 2,426.
    """
    balances = [day.balance for day in RESULTS["two-days"].days.values()]
    assert [(one.eaten, one.needed, one.lean) for one in balances] == [
        (170 + 60 + 230 + 380 + 60 + 390 + 140 + 380 + 70, 2060, Lean.EVEN),
        (80 + 180 + 60 + 420 + 130 + 390 + 390 + 170 + 150, 2430, Lean.NEEDED),
    ]


def test_the_two_days_are_of_one_adult_who_did_something_else_and_the_help_fades() -> None:
    first, second = (day.stop for day in RESULTS["two-days"].days.values())
    assert (first.person.name, first.person.age) == (second.person.name, second.person.age)
    assert first.person.activity != second.person.activity
    assert (first.help, second.help) == (Help.WORKED, Help.HOPS)
    rows = RESULTS["two-days"].comparisons["breakfasts"].stop.rows
    assert {row.help for row in rows} == {Help.NONE}


def test_what_theo_got_on_the_rainy_day_is_a_slip_that_is_known() -> None:
    """He took the smaller digit from the larger (Brown & Burton 1978), and is helped in the film."""
    balance = RESULTS["two-days"].days["rainy-day"].balance
    slips = gap_answers(int(balance.needed * 10), int(balance.eaten * 10))
    assert slips[Mistake.SMALLER_FROM_LARGER] == (18_200,)
    said = next(
        stop.say or "" for stop in RESULTS["two-days"].lesson.file.stops if stop.id == "rainy-day"
    )
    assert "1,820" in said


def test_the_gap_of_the_long_path_packs_the_bag() -> None:
    """2,430 − 1,970 by hand, and 170 + 60 + 230 of the rainy-day breakfast."""
    result = RESULTS["two-days"]
    answer = next(one for one in result.figures if one.id == "parting.answer")
    assert answer.value == 460 == result.days["long-path"].balance.gap
    total = result.comparisons["breakfasts"].total
    assert (total.first, total.second) == (460, 80 + 180 + 60)


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("river-walk", [(45, 0), (90, 410), (420, 280)]),
        ("market-drinks", [(12, 24), (25, 0), (9, 36), (21, 21)]),
        ("soup-night", [(460, 80), (650, 920), (1200, 770)]),
        ("bean-stew", [(19, 1), (2, 15), (4, 4)]),
        ("two-days", [(170, 80), (60, 180), (230, 60)]),
        ("garden-baskets", [(240, 420), (540, 170), (290, 580)]),
    ],
)
def test_the_numbers_are_those_of_the_records(name: str, shown: list[tuple[int, int]]) -> None:
    """USDA SR Legacy 2018-04, value per 100 g times portion weight, rounded by 21 CFR 101.9(c) by hand."""
    assert [(gap.first, gap.second) for gap in gaps(RESULTS[name])] == shown


@each_lesson
def test_both_directions_occur(result: LessonResult) -> None:
    assert {0, 1} <= {gap.holder for gap in gaps(result)}


@each_lesson
def test_no_subtraction_comes_twice_and_something_is_left_over(result: LessonResult) -> None:
    found = gaps(result)
    assert len({(gap.larger, gap.smaller) for gap in found}) == len(found)
    counts = [
        counted.count for movement in result.movements.values() for counted in movement.counts
    ]
    assert any(count.left_over for count in counts)


def test_no_lesson_shows_fava_beans() -> None:
    """They can set off a severe blood reaction in people with G6PD deficiency (M)."""
    shown = {
        held.food.id
        for result in RESULTS.values()
        for one in result.comparisons.values()
        for row in one.rows
        for held in row.sides
        if held.food
    }
    assert not {food for food in shown if "fava" in food}


def test_the_pots_of_the_stew_together() -> None:
    """SR Legacy 2018-04 by hand: 19 + 2 + 4 and 1 + 15 + 4 g; halves of 18 and of 13, and 4 = 4."""
    result = RESULTS["bean-stew"]
    total = result.comparisons["pots"].total
    assert (total.first, total.second, total.size) == (25, 20, 5)
    assert [counted.count.whole for counted in result.movements["bean-dance"].counts] == [9, 6]


def test_barley_makes_the_pots_even_as_the_story_says() -> None:
    """SR Legacy 2018-04 by hand: 20 - 1 + 6 = 25 g, and with half a cup of barley 20 - 1 + 3 = 22."""
    result = RESULTS["bean-stew"]
    told = {figure.id: figure.value for figure in result.figures}
    assert (told["barley.answer"], told["parting.answer"]) == (25, 22)
    assert told["pots.total.lemon-pot"] == told["barley.answer"]


def test_the_cup_that_is_poured_holds_half_the_spoons() -> None:
    """SR Legacy 2018-04 by hand: grape juice 36 g, nine spoons of 4; half of it 18, orange juice 21."""
    told = {figure.id: figure.value for figure in RESULTS["market-drinks"].figures}
    assert (told["nine-spoons.answer"], told["parting.answer"]) == (36, 18)


def test_one_change_makes_the_baskets_even_and_the_others_go_every_other_way() -> None:
    """SR Legacy 2018-04 by hand, as above.

    240 + 540 + 290 = 1,070 and 420 + 170 + 580 = 1,170 mg. Two oranges hold 470, wild rice 170 as
    the brown rice does, zucchini 480; without the tomato the North basket holds 780.
    """
    result = RESULTS["garden-baskets"]
    total = result.comparisons["baskets"].total
    assert (total.first, total.second, total.size) == (1070, 1170, 100)
    assert {
        figure.id.removeprefix("swap."): figure.value
        for figure in result.of_stop("swap")
        if figure.id.endswith(".gap")
    } == {
        "orange-raw_orange-raw.gap": 130,
        "rice-brown-cooked_rice-wild-cooked.gap": 100,
        "squash-butternut-baked_zucchini-cooked.gap": 0,
        "tomato-raw_left-out.gap": 390,
    }


def test_the_food_that_the_baskets_ask_for_is_the_one_that_holds_most() -> None:
    values = _values("garden-baskets")
    assert max(values, key=values.__getitem__) == "squash-butternut-baked"
    assert values["squash-butternut-baked"] == 2 * values["tomato-raw"]


def test_some_rows_hold_the_same() -> None:
    assert [
        name for name, result in RESULTS.items() if any(gap.holder is None for gap in gaps(result))
    ] == ["market-drinks", "bean-stew"]


def borrowing_rows() -> Iterator[tuple[str, Gap]]:
    for name, result in RESULTS.items():
        yield from (
            (f"{name} {gap.larger}-{gap.smaller}", gap) for gap in gaps(result) if _borrows(gap)
        )


def _borrows(gap: Gap) -> bool:
    larger, smaller = str(gap.larger), str(gap.smaller).rjust(len(str(gap.larger)), "0")
    return any(one < other for one, other in zip(larger, smaller, strict=True))


@pytest.mark.parametrize("gap", [pytest.param(gap, id=name) for name, gap in borrowing_rows()])
def test_the_commonest_mistakes_give_different_answers(gap: Gap) -> None:
    """Brown & Burton 1978, Cogn Sci 2:155-192; choose numbers so that each bug shows (references.md 8)."""
    answers = gap_answers(int(gap.larger * 10), int(gap.smaller * 10))
    kinds = (Mistake.SMALLER_FROM_LARGER, Mistake.NO_DECREMENT, Mistake.ADDED)
    wrong = [answer for kind in kinds for answer in answers[kind]]
    assert len(wrong) == len(set(wrong)) == 3
    assert gap.size * 10 not in wrong


@each_lesson
def test_every_stop_has_an_address_of_its_own(result: LessonResult) -> None:
    names = [stop.id for stop in result.lesson.file.stops]
    assert None not in names
    assert len(set(names)) == len(names)


@each_lesson
def test_the_standards_are_known(result: LessonResult) -> None:
    """Codes of the Common Core State Standards for Mathematics, as listed in references.md 8."""
    assert set(result.lesson.file.standards) <= set(library().site.standards)


@each_lesson
def test_the_room_is_checked_and_bodies_are_warm_before_anyone_moves(result: LessonResult) -> None:
    """Warm-up, room check and stop signs: references.md 4 (R, and M for the room)."""
    said = next(stop.say or "" for stop in result.lesson.file.stops if isinstance(stop, MoveStop))
    first = paragraphs(said)[0].lower()
    assert "floor" in first
    assert re.search(r"eating|eats", first)
    assert re.search(r"roll your shoulders|swing loose|stretch your back", first)
    assert re.search(r"sit for any|chair|sitting", first)
    assert "stop if anything hurts" in said.lower()


@each_lesson
def test_the_script_says_the_numbers_that_the_page_shows(result: LessonResult) -> None:
    """Each row has its own paragraph, behind that of an estimate, and begins with the row's numbers."""
    for comparison in result.comparisons.values():
        stop = comparison.stop
        of_rows = paragraphs(stop.say or "")[1 if stop.estimate else 0 :]
        for said, row, asked in zip(of_rows, comparison.rows, stop.rows, strict=True):
            numbers = [Decimal(number.replace(",", "")) for number in re.findall(r"\d[\d,]*", said)]
            assert numbers[:2] == [row.gap.first, row.gap.second]
            assert len(numbers) == 2 or asked.help is not Help.NONE  # a slip is looked at


@each_lesson
def test_the_times_leave_room_for_the_words(result: LessonResult) -> None:
    """At most 130 words a minute in each cue, DCMP for lower grades (references.md 6.2, R)."""
    for cue in spoken(result.lesson):
        words = sum(len(line.split()) for line in cue.lines)
        assert words * 60_000 <= 130 * (cue.end - cue.start)


@each_lesson
def test_the_captions_are_those_of_the_script(result: LessonResult) -> None:
    video = result.lesson.file.video
    assert video
    written = ROOT / "lessons" / result.lesson.id / video.captions["en"]
    draft = caption_draft(result.lesson).replace(f"NOTE {DRAFT_NOTE}\n\n", "")
    assert re.sub(r"NOTE meant: .+\n\n", "", written.read_text("utf-8")) == draft


@each_lesson
def test_the_captions_are_within_the_limits(result: LessonResult) -> None:
    """One or two lines of at most 32 letters (R), 1.3 to 6 s (M): DCMP, references.md 6.2."""
    stops = result.lesson.file.stops
    cues = spoken(result.lesson)
    assert all(len(cue.lines) <= 2 and max(map(len, cue.lines)) <= 32 for cue in cues)
    assert all(1_300 <= cue.end - cue.start <= 6_000 for cue in cues)
    assert all(one.end <= other.start for one, other in pairwise(cues))
    pauses = [span.end for span in pause_points(stops)]
    assert not [cue for cue in cues for pause in pauses if cue.start < pause < cue.end]


@each_lesson
def test_the_video_covers_the_last_stop_and_is_small(result: LessonResult) -> None:
    lesson = result.lesson
    assert lesson.file.video
    last = spans(lesson.file.stops)[-1].end / 1000
    assert lesson.duration == pytest.approx(last + 2, abs=0.2)
    assert (ROOT / "lessons" / lesson.id / lesson.file.video.file).stat().st_size <= 450_000


def _values(name: str) -> dict[str, Decimal]:
    result = RESULTS[name]
    sides = [
        held
        for comparison in result.comparisons.values()
        for row in comparison.rows
        for held in row.sides
    ]
    return {held.item.food or "": held.shown.value for held in sides}


def test_words_about_size_are_true() -> None:
    """What the reveals claim, held against the shown numbers."""
    soup = _values("soup-night")
    assert soup["soup-tomato-canned"] > 5 * soup["soup-tomato-low-sodium"]
    drinks = _values("market-drinks")
    assert drinks["lemonade"] == drinks["milk-chocolate"] + 1 == max(drinks[one] for one in CUPS)


def test_reveals_name_the_side_that_holds_more() -> None:
    """The direction of each row, as the reveal of each lesson tells it."""
    told = {
        "river-walk": [0, 1, 0],
        "market-drinks": [1, 0, 1, None],
        "soup-night": [0, 1, 0],
        "bean-stew": [0, 1, None],
        "two-days": [0, 1, 0],
        "garden-baskets": [1, 0, 1],
    }
    assert {name: [gap.holder for gap in gaps(result)] for name, result in RESULTS.items()} == told


@each_lesson
def test_fiber_alone_aims_at_more(result: LessonResult) -> None:
    for stop in result.lesson.file.stops:
        if isinstance(stop, CompareStop):
            assert (stop.aim == "more") == (stop.measure is Measure.FIBER)
