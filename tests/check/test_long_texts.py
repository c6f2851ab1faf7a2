"""A text of one endless sentence is looked through in parts, so that twice the text is twice the work."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.check import check_lesson
from generator.check.breath import LONGEST, parts
from generator.check.claims.mentions import Finder
from generator.check.spoken_numbers import passes
from generator.language.around_numbers import AroundNumbers
from generator.language.number import Number
from tests.project import GOOD, worked


def saying(folder: Path, unit: str, signs: int) -> int:
    """How many questions a script raises that says nothing but this, up to its bound."""
    say = (unit * (signs // len(unit))).strip()
    text = GOOD.replace("say: Hello from Larkmead.", f"say: '{say}'")
    return len([*check_lesson(worked(folder, text))])


@pytest.mark.parametrize(
    ("text", "lengths"),
    [
        ("", [0]),
        ("a" * LONGEST, [LONGEST]),
        ("a" * (LONGEST + 1), [LONGEST, 1]),
        ("ab " * 300, [LONGEST, 300]),
        ("a" * 500 + " " + "b" * 500, [501, 500]),
        (" " * 2 * LONGEST, [LONGEST, LONGEST]),
    ],
)
def test_parts_are_cut_after_a_space(text: str, lengths: list[int]) -> None:
    found = list(parts(text))
    assert [len(part) for _, part in found] == lengths
    assert all(text[at : at + len(part)] == part for at, part in found)
    assert "".join(part for _, part in found) == text


@pytest.mark.parametrize("unit", ["1 ", "1/", "one two ", "2 times as much as ", "It is 1. "])
def test_the_work_grows_with_the_text_and_not_with_its_square(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, unit: str
) -> None:
    """Counted in signs that are looked through for a number, and for foods that are named."""
    looked: list[int] = []
    judged, mentions = passes._passes, Finder.mentions

    def counted(text: str, number: Number, around: AroundNumbers) -> bool:
        looked.append(len(text))
        return judged(text, number, around)

    def read(finder: Finder, sentence: str) -> object:
        looked.append(len(sentence))
        return mentions(finder, sentence)

    monkeypatch.setattr(passes, "_passes", counted)
    monkeypatch.setattr(Finder, "mentions", read)
    work = []
    for signs in (1_900, 7_600):
        saying(tmp_path / str(signs), unit, signs)
        work.append(sum(looked))
        looked.clear()
    assert 0 < work[1] <= 6 * work[0]


def test_a_number_far_into_a_sentence_is_told_at_its_place(tmp_path: Path) -> None:
    say = "and " * 400 + "it holds 371 kcal"
    text = GOOD.replace("say: Hello from Larkmead.", f"say: '{say}'")
    told = [one for one in check_lesson(worked(tmp_path, text)) if "371" in one.what]
    assert [(one.place.line, one.place.column) for one in told] == [
        (8, len("    say: '") + say.index("371") + 1)
    ]
