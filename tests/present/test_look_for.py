"""What the teaching notes say to look for, from the numbers of each lesson."""

from __future__ import annotations

import pytest

from generator.compute.result import LessonResult
from generator.present.stops.in_lesson import in_lesson
from generator.present.stops.kinds import kind_of
from generator.present.words.look_for import while_comparing, while_moving
from generator.present.words.say import Say
from tests.worked import library, worked

SAY = Say(library().words["en"])
SPANISH = Say(library().words["es"])
STOPS = """\
- compare:
    id: c
    measure: energy
    sides: [Here, There]
    rows: [{rows}]
    solve: [gap, count{total}]
- move:
    id: m
    for: c
    one_move_per: {per}
    moves: [{moves}]
"""


def lesson(*rows: tuple[int, int], per: int = 10, total: bool = False) -> LessonResult:
    pairs = (
        f"[{{name: First {at}, value: {one}, source: card}}, "
        f"{{name: Second {at}, value: {other}, source: card}}]"
        for at, (one, other) in enumerate(rows)
    )
    moves = ", ".join(["march", "side-step", "wall-push", "knee-lift"][: len(rows)])
    told = ", total" if total else ""
    return worked(STOPS.format(rows=", ".join(pairs), moves=moves, per=per, total=told))


def compared(*rows: tuple[int, int], total: bool = False) -> list[str]:
    return list(while_comparing(lesson(*rows, total=total).comparisons["c"], SAY))


def moved(*rows: tuple[int, int], per: int) -> list[str]:
    return list(while_moving(lesson(*rows, per=per).movements["m"], SAY))


@pytest.mark.parametrize(
    ("row", "sign"),
    [
        ((90, 410), "In row 1, says first that “There” holds more, and begins with 410."),
        # 90 + 10 = 100, + 300 = 400, + 10 = 410, by hand
        (
            (90, 410),
            "In row 1, counts up from 90 to 410 in large hops, by way of 100 and 400, and not one by one.",
        ),
        (
            (420, 280),
            "In row 1, 420 − 280: trades 1 for 10 and makes the digit it came from one less.",
        ),
        (
            (400, 270),
            "In row 1, 400 − 270: trades 1 for 10 and makes the digit it came from one less.",
        ),
        (
            (1200, 770),
            "In row 1, 1,200 − 770: trades 1 for 10 and makes the digit it came from one less.",
        ),
        ((1000, 770), "In row 1, 1,000 − 770: trades past the 0, one place at a time."),
        ((0, 45), "In row 1, says that taking 0 away leaves 45 as it is."),
        ((30, 30), "In row 1, sees that both hold the same and says that there is no gap."),
    ],
)
def test_a_row_asks_for_the_sign_that_fits_its_numbers(row: tuple[int, int], sign: str) -> None:
    assert sign in compared(row)


@pytest.mark.parametrize(
    ("row", "word"),
    [
        ((410, 90), "says first"),
        ((0, 45), "counts up"),
        ((30, 30), "counts up"),
        ((480, 260), "trades"),
        ((15, 7), "trades"),
        ((90, 410), "taking 0 away"),
        ((90, 410), "the same"),
        ((90, 410), "Adds up"),
    ],
)
def test_no_sign_is_named_that_the_numbers_do_not_ask_for(row: tuple[int, int], word: str) -> None:
    assert [line for line in compared(row) if word in line] == []


def test_each_sign_stands_once_at_the_first_row_that_asks_for_it() -> None:
    lines = compared((90, 410), (280, 420), (0, 45))
    assert [line for line in lines if "says first" in line] == [
        "In row 1, says first that “There” holds more, and begins with 410."
    ]
    assert [line for line in lines if "taking 0 away" in line] == [
        "In row 3, says that taking 0 away leaves 45 as it is."
    ]


def test_totals_are_looked_for_where_they_are_asked() -> None:
    """90 + 420 = 510 and 410 + 280 = 690, by hand."""
    lines = compared((90, 410), (420, 280), total=True)
    assert (
        lines[-1] == "Adds up each side before comparing, 510 and 690, and does not add the gaps."
    )


def test_a_count_names_the_largest_and_what_is_left_over() -> None:
    """320 ÷ 20 = 16; 150 ÷ 20 = 7, and 10 left over, by hand."""
    assert moved((90, 410), (280, 430), per=20) == [
        "Sees how many groups of 20 are in 320 without counting one by one: 16.",
        "Says that the 10 left over of 150 is too small for one more count.",
        "Shares a count out, standing or seated, and says how the parts make it whole again.",
    ]


def test_a_count_without_anything_left_over_says_nothing_of_it() -> None:
    assert not [line for line in moved((90, 410), per=10) if "left over" in line]


@pytest.mark.parametrize(
    ("asked", "sign"),
    [
        ("", "Gives a reason, and listens to another one, before the answer is opened."),
        # 410 - 90 = 320, half of it, by hand
        (
            ", answer: half c.total.gap",
            "Says how to get there before the answer is opened: 320 ÷ 2 = 160.",
        ),
        (
            ", which: {of: c, holds: 9 * c.one-move-per}",
            "Chooses by the numbers, and says what the right one has to hold: 90\N{NO-BREAK SPACE}kcal.",
        ),
        (
            ", choices: [{says: A pie, right: true}, {says: A pea}]",
            "Says why the other choices do not fit, before the answer is opened.",
        ),
    ],
)
def test_a_question_with_an_answer_is_worked_at_and_an_open_one_talked_about(
    asked: str, sign: str
) -> None:
    pair = "[{name: One, value: 90, source: card}, {name: Two, value: 410, source: card}]"
    stops = STOPS.format(rows=pair, moves="march", per=10, total="")
    result = worked(f"{stops}- ask: {{prompt: Which?, reveal: See.{asked}}}\n")
    told = in_lesson(2, result, SAY)
    assert kind_of(told).look_for(told) == (sign,)


@pytest.mark.parametrize("say", [SAY, SPANISH], ids=["en", "es"])
def test_every_kind_of_stop_that_children_work_at_has_signs(say: Say) -> None:
    """A stop to watch has none, and what is talked over has its own questions."""
    result = worked(
        "- watch: {from: '0:00', to: '0:10'}\n- ask: {prompt: Which?, reveal: See.}\n"
        + STOPS.format(
            rows="[{food: apple-raw, amount: 1 medium}, {food: pear-raw, amount: 1 medium}]",
            moves="march",
            per=10,
            total="",
        )
        + "- what_if: {for: c, changes: [{change: apple-raw, leave_out: true}, "
        "{change: pear-raw, leave_out: true}]}\n- talk: {prompt: And?}\n"
    )
    signs = {
        told.stop.kind: kind_of(told).look_for(told)
        for index in range(len(result.lesson.file.stops))
        for told in [in_lesson(index, result, say)]
    }
    assert {kind for kind, lines in signs.items() if lines} == {"ask", "compare", "move", "what_if"}
    assert {kind for kind, lines in signs.items() if not lines} == {"watch", "talk"}
