"""A typed stamp is looked up in a small file, whatever letters are taken for one another."""

from __future__ import annotations

import json
from pathlib import Path
from random import Random

import pytest

from generator.present.stamps.alike import SIGNS, alike
from generator.present.stamps.shards import KnownStamp, shards, signs_of
from generator.present.words.stamp import LETTERS, stamp_of
from tests.project import ROOT

CASES = json.loads((ROOT / "tests/examples/stamps.json").read_text("utf-8"))
SHEETS = ("lesson", "cards", "worksheet", "answers", "practice", "notes", "projector", "family")


@pytest.mark.parametrize(("typed", "wanted"), CASES)
def test_signs_that_look_alike_are_taken_for_one(typed: str, wanted: str) -> None:
    assert alike(typed) == wanted


def test_every_sign_of_a_stamp_can_be_looked_up() -> None:
    assert set(alike(LETTERS)) == set(SIGNS)


def known(lessons: int, before: int = 0) -> list[KnownStamp]:
    """The sheets of so many lessons in two languages, today and so many times before."""
    random = Random(f"{lessons} {before}")  # noqa: S311  # no secret
    return [
        KnownStamp(
            stamp_of(str(random.random())), f"a-lesson-{n}", language, sheet, now=int(not turn)
        )
        for turn in range(before + 1)
        for n in range(lessons)
        for language in ("en", "es")
        for sheet in SHEETS
    ]


@pytest.mark.parametrize(("before", "signs"), [(0, 1), (9, 2)])
def test_no_file_of_a_thousand_lessons_is_large(before: int, signs: int) -> None:
    every = known(1000, before)
    assert signs_of(every) == signs
    files = list(shards(every, signs))
    assert len(files) == len(SIGNS) ** signs
    assert max(len(one.content) for one in files) < 60_000
    held = [stamp for one in files for stamp in json.loads(one.content)]
    assert sorted(held) == sorted({one.stamp for one in every})


def test_a_stamp_lies_in_the_file_of_its_first_sign() -> None:
    for one in shards(known(3), 1):
        for stamp, told in json.loads(one.content).items():
            assert Path(one.path).stem == alike(stamp)[0]
            assert [sheet[0][:9] for sheet in told] == ["a-lesson-"]
            assert told[0][3] == 1


def test_lessons_that_print_the_same_are_told_each_and_a_sheet_once() -> None:
    one = KnownStamp("K7Q2FM", "soup", "en", "practice", now=1)
    again, other = one._replace(now=0), one._replace(lesson="broth", now=0)
    every = shards([one, again, other], 1)
    (told,) = (json.loads(file.content) for file in every if "/K." in file.path)
    assert told == {"K7Q2FM": [["soup", "en", "practice", 1], ["broth", "en", "practice", 0]]}
