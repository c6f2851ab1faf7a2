"""Every text of a lesson is asked about its claims and its words, at the letter where they stand."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check import check_lesson
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
