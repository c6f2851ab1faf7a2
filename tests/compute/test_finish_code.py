"""Finish codes: what they tell comes back, mistakes are noticed, and what changes their marks."""

from __future__ import annotations

import json
import random
from dataclasses import replace
from itertools import product
from pathlib import Path
from typing import Any

import pytest

from generator.compute.base32 import CHECKS, SYMBOLS, decode, encode
from generator.compute.counted_answers import AskedTwice
from generator.compute.finish_code import (
    Done,
    Finished,
    Found,
    Told,
    Unread,
    finish_code,
    read_code,
    step_of,
)
from generator.compute.finish_layout import (
    SPREAD,
    FinishLayout,
    finish_layout,
    former_marks,
    mark,
)
from tests.project import GOOD, ROOT, worked

CASES = json.loads((ROOT / "tests/examples/finish-codes.json").read_text("utf-8"))
PARTED = GOOD.replace("stops:\n", "parting: {prompt: So?, answer: total.gap}\nstops:\n", 1)


def layout_of(told: dict[str, Any]) -> FinishLayout:
    """A layout of a case, its names made up."""
    answers = [f"a{number}.gap" for number in range(told["answers"])]
    for number, at in enumerate(told["again"]):
        answers[at] = f"after-{number}.answer"
    return FinishLayout(
        lesson=told["lesson"],
        numbers=told["numbers"],
        stops=tuple(f"stop-{number}" for number in range(told["stops"])),
        answers=tuple(answers),
        twice=tuple(
            AskedTwice(f"before-{number}", f"after-{number}")
            for number in range(len(told["again"]))
        ),
    )


def finished_of(told: dict[str, Any]) -> Finished:
    return Finished(
        tuple(map(Done, told["stops"])),
        tuple(map(Found, told["answers"])),
        tuple(map(Told, told["before"])),
        tuple(map(Told, told["after"])),
        told["step"],
    )


WHOLE = layout_of(CASES["codes"][-1]["layout"])
DONE = finished_of(CASES["codes"][-1]["finished"])
CODE = finish_code(DONE, WHOLE)
PLAIN = CODE.replace("-", "")


@pytest.mark.parametrize("case", CASES["codes"], ids=lambda case: case["title"])
def test_a_code_and_what_it_tells(case: dict[str, Any]) -> None:
    layout, finished = layout_of(case["layout"]), finished_of(case["finished"])
    assert layout.symbols(finished.ways) == case["length"]
    assert finish_code(finished, layout) == case["code"]
    assert read_code(case["code"], [layout]) == ((layout, finished),)
    assert read_code(case["code"].lower().replace("0", "o"), [layout]) == ((layout, finished),)


def test_the_smallest_code_by_hand() -> None:
    """Lesson 1, numbers 0, nothing done: 1 × 33 = 33 = 1 × 32 + 1, and 33 has the check symbol ~."""
    case = CASES["codes"][0]
    assert case["code"].replace("-", "").lstrip("0") == "11~"


@pytest.mark.parametrize(("minutes", "step"), CASES["minutes"])
def test_minutes_are_told_in_steps(minutes: float, step: int) -> None:
    assert step_of(minutes) == step


def test_every_way_to_do_a_small_lesson_has_its_own_code() -> None:
    layout = replace(WHOLE, stops=("a", "b"), answers=("a.gap", "b.gap"), twice=())
    codes = {
        finish_code(Finished(stops, answers, (), (), step), layout)
        for stops in product(Done, repeat=2)
        for answers in product(Found, repeat=2)
        for step in range(8)
    }
    assert len(codes) == 9 * 9 * 8


def test_any_change_of_two_neighbors_is_noticed() -> None:
    """Whatever they are changed into; so any one wrong symbol is, and any two that changed places."""
    for at in range(len(PLAIN) - 1):
        last = CHECKS if at == len(PLAIN) - 2 else SYMBOLS
        for first, second in product(SYMBOLS, last):
            changed = PLAIN[:at] + first + second + PLAIN[at + 2 :]
            if changed != PLAIN:
                assert read_code(changed, [WHOLE]) is Unread.WRONG_SYMBOL, changed


def test_of_a_hundred_thousand_changes_none_is_believed(
    record_property: pytest.RecordProperty,
) -> None:
    """The check symbol lets one in 37 pass, the whole code one in 1,221 and then by its marks hardly any."""
    draw, tries = random.Random(32), 100_000  # noqa: S311  # no secret
    kinds = dict.fromkeys(Unread, 0)
    believed = 0
    for _ in range(tries):
        changed = list(PLAIN)
        while "".join(changed) == PLAIN:
            for at in draw.sample(range(len(PLAIN)), draw.randint(1, 6)):
                changed[at] = draw.choice(CHECKS if at == len(PLAIN) - 1 else SYMBOLS)
        read = read_code("".join(changed), [WHOLE])
        if isinstance(read, Unread):
            kinds[read] += 1
        else:
            believed += 1
    wrong = kinds[Unread.WRONG_SYMBOL]
    record_property("told", f"finish codes: {wrong:,} of {tries:,} changes noticed by arithmetic")
    assert wrong >= tries * (1 - 1 / 37)
    assert believed <= 5


@pytest.mark.parametrize("text", ["", "hello!", "16J7 8KQ", "U" * 13, "1" * 3_000])
def test_noise_is_no_code(text: str) -> None:
    assert isinstance(read_code(text, [WHOLE]), Unread)


def test_a_code_of_another_lesson_or_of_other_numbers_says_so() -> None:
    other = replace(WHOLE, lesson=WHOLE.lesson ^ 1)
    assert read_code(CODE, [other]) is Unread.OTHER_LESSON
    assert read_code(CODE, []) is Unread.OTHER_LESSON
    older = replace(WHOLE, numbers=WHOLE.numbers ^ 1)
    assert read_code(CODE, [other, older]) is Unread.OTHER_NUMBERS


def test_two_lessons_of_one_mark_are_both_named() -> None:
    twin = replace(WHOLE, stops=tuple(f"other-{stop}" for stop in WHOLE.stops))
    read = read_code(CODE, [WHOLE, twin])
    assert not isinstance(read, Unread)
    assert [layout for layout, _ in read] == [WHOLE, twin]


@pytest.mark.parametrize(
    ("after", "answer"),
    [(Told.RIGHT, Found.LATER), (Told.WRONG, Found.FIRST), (Told.NOT, Found.LATER)],
)
def test_a_code_whose_places_contradict_one_another_is_none(after: Told, answer: Found) -> None:
    at = WHOLE.asked_again[0]
    answers = (*DONE.answers[:at], answer, *DONE.answers[at + 1 :])
    code = finish_code(replace(DONE, answers=answers, after=(after,)), WHOLE)
    assert read_code(code, [WHOLE]) is Unread.NO_CODE


def test_a_code_of_some_stops_is_longer_and_none_of_a_whole_lesson_changes() -> None:
    whole, parted = WHOLE.symbols(2), WHOLE.symbols(3)
    assert parted > whole
    some = replace(DONE, stops=(Done.NOT_ASKED, *DONE.stops[1:]))
    assert len(finish_code(some, WHOLE).replace("-", "")) == parted + 1
    assert len(PLAIN) == whole + 1


def test_a_long_code_that_leaves_no_stop_out_is_none() -> None:
    """It would be a second code for the same thing: each code is written in one way."""
    some = finish_code(replace(DONE, stops=(Done.NOT_ASKED, *DONE.stops[1:])), WHOLE)
    number, length = decode(some)  # type: ignore[misc]  # it is read
    first = 2**24 * 8  # what one more in the place of the first stop comes to
    all_asked = encode(number - SPREAD * first, length)
    assert read_code(all_asked, [WHOLE]) is Unread.NO_CODE


@pytest.mark.parametrize("wrong", [replace(DONE, step=8), replace(DONE, stops=DONE.stops[1:])])
def test_what_does_not_fit_its_layout_is_refused(wrong: Finished) -> None:
    with pytest.raises(ValueError):  # noqa: PT011  # two ways not to fit, two sentences
        finish_code(wrong, WHOLE)


def test_words_and_languages_change_no_mark(tmp_path: Path) -> None:
    layout = finish_layout(worked(tmp_path, PARTED))
    reworded = PARTED.replace("Which side holds more?", "Which one holds more?")
    reworded = reworded.replace("So?", "And now?").replace("title: Two", "title: Both")
    assert finish_layout(worked(tmp_path, reworded)) == layout
    assert layout.lesson == mark("meal")


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("value: 110", "value: 120"),  # a number that is asked for
        ("[gap, count, total]", "[gap, count]"),
        ("answer: total.gap", "answer: half total.gap"),
        ("      id: guess\n", "      id: guess-first\n"),  # a stop with another name
        ("  - talk:\n", "  - talk: {prompt: Well?}\n  - talk:\n"),
    ],
)
def test_other_numbers_and_stops_change_it(tmp_path: Path, old: str, new: str) -> None:
    layout = finish_layout(worked(tmp_path, PARTED))
    assert old in PARTED
    other = finish_layout(worked(tmp_path, PARTED.replace(old, new)))
    assert other.numbers != layout.numbers
    assert other.lesson == layout.lesson


def test_codes_of_the_demo_are_short() -> None:
    from tests.site_data.test_lessons import RESULTS  # noqa: PLC0415  # works out the whole demo

    lengths = {name: finish_layout(result).symbols(2) + 1 for name, result in RESULTS.items()}
    assert all(11 <= length <= 14 for length in lengths.values()), lengths


def test_codes_of_older_names_are_known_by_their_marks(tmp_path: Path) -> None:
    """Made of the lesson under each name that it and its stops had: what was shown then is read now."""
    asked = GOOD.replace("  - talk:\n", "  - talk:\n      id: last\n")
    asked = asked.replace(
        "  - move:\n", "  - move:\n      id: count-it\n"
    )  # else called by what it counts
    renamed = asked.replace(
        "      id: breakfast\n", "      id: morning\n      formerly: [breakfast, early]\n"
    )
    renamed = renamed.replace("for: breakfast", "for: morning")
    renamed = renamed.replace("      id: last\n", "      id: end\n      formerly: [last]\n")
    now = worked(tmp_path / "now", f"formerly: [lunch, snack]\n{renamed}")
    lessons, numbers = former_marks(now)
    assert lessons == (mark("lunch"), mark("snack"))
    then = asked.replace("id: breakfast", "id: early").replace("for: breakfast", "for: early")
    halfway = renamed.replace("      id: end\n      formerly: [last]\n", "      id: last\n")
    for number, text in enumerate((asked, then, halfway)):
        before = finish_layout(worked(tmp_path / str(number), text))
        assert before.numbers in numbers
        assert before.numbers != finish_layout(now).numbers
    other = asked.replace("150 g", "250 g")
    assert finish_layout(worked(tmp_path / "other", other)).numbers not in numbers
    assert former_marks(worked(tmp_path / "never", GOOD)) == ((), ())
