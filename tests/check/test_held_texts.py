"""Every text of a lesson is asked about its claims and its words, at the letter where they stand."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from generator.check import check_lesson
from generator.check.spoken_numbers import spoken_numbers
from generator.model.captions import CaptionFile
from generator.read.vtt import read_vtt
from tests.caption_lesson import LESSON, captioned, lines
from tests.project import worked

START = ((30, 33, "Row one. My oatmeal holds 170."), (33, 36, "The bagel holds 260."))
END = ((50, 54, "Row two. The carrot salad\nholds 110."), (54, 58, "The juice holds 1,020."))


def heard(folder: Path, *words: str) -> list[str]:
    """What is told of cues in the middle of the captions, of their words alone."""
    cues = tuple((36 + 4 * at, 40 + 4 * at, text) for at, text in enumerate(words))
    found = lines(check_lesson(captioned(folder, *START, *cues, *END)))
    return [line for line in found if "“" in line]


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (
            ["The bagel holds\ntwice the oatmeal."],
            ["10:11: at 0:36, “The bagel holds twice” does not hold"],
        ),
        (
            ["The oatmeal holds more", "than the bagel."],
            ["10:13: at 0:36, “The oatmeal holds more” does not hold"],
        ),
        (
            ["The bagel holds", "twice the oatmeal."],  # one sentence over two cues
            ["10:11: at 0:36, “The bagel holds twice” does not hold"],
        ),
        (
            ["Burn it off."],
            ["10:1: at 0:36, “Burn it off” makes food a matter of guilt or movement its price"],
        ),
        (
            ["Now you can burn it", "off again."],
            ["10:13: at 0:36, “burn it off” makes food a matter of guilt or movement its price"],
        ),
        (["The bagel holds more than\nthe oatmeal."], []),
        (["Is it twice as much?"], []),
    ],
)
def test_captions(tmp_path: Path, words: list[str], told: list[str]) -> None:
    assert heard(tmp_path, *words) == told


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("summary: Find", "summary: The bagel @holds twice the oatmeal. Find"),
        ("title: Two breakfasts", "title: The bagel @holds twice the oatmeal"),
        ("goals: [Subtract.]", "goals: [The bagel @holds twice the oatmeal.]"),
        ("We will see.", "|\n        Well.\n\n        The bagel @holds\n        twice it."),
        ("We will see.", ">-\n        Well, and\n        the bagel @holds twice it."),
        ("We will see.", "Well, and\n        the bagel @holds twice it."),
        ("We will see.", "'It''s the bagel that @holds twice.'"),
        ("We will see.", '"A \\"bagel\\" @holds twice the oatmeal."'),
        ("id: guess", "id: guess\n      title: The bagel @holds twice the oatmeal"),
    ],
)
def test_a_claim_is_told_at_its_letter(tmp_path: Path, old: str, new: str) -> None:
    """The sign ``@`` stands in the case alone, before the letter that is told."""
    assert old in LESSON
    text = LESSON.replace(old, new, 1)
    above = text[: text.index("@")]
    at = f"{above.count(chr(10)) + 1}:{len(above) - above.rfind(chr(10))}"
    told = [
        problem
        for problem in check_lesson(worked(tmp_path, text.replace("@", "")))
        if "does not hold" in problem.what
    ]
    assert [f"{one.place.line}:{one.place.column}" for one in told] == [at]


def test_a_number_that_a_note_calls_meant_is_not_asked_about(tmp_path: Path) -> None:
    text = "WEBVTT\n\n{}00:31.000 --> 00:35.000\nRow one. It is 26 or 4,711 kcal.\n"
    for note, told in (("", ["26", "4,711"]), ("NOTE meant: 26\n\n", ["4,711"])):
        captions = read_vtt("lessons/meal/meal.en.vtt", "en", text.format(note))
        assert isinstance(captions, CaptionFile)
        result = worked(tmp_path, LESSON)
        heard = replace(result, lesson=replace(result.lesson, captions={"en": captions}))
        found = [one.what for one in spoken_numbers(heard) if "no number" in one.what]
        assert [what.split("“")[1].split("”")[0] for what in found] == told


def test_a_note_that_names_no_number_is_told() -> None:
    text = "WEBVTT\n\nNOTE meant:\n\n00:31.000 --> 00:35.000\nHello.\n"
    found = read_vtt("meal.en.vtt", "en", text)
    assert isinstance(found, list)
    assert [(one.place.line, one.what) for one in found] == [
        (3, "the note names no number that is meant")
    ]
