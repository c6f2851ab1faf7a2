"""Each message is true, stands at its place, and proposes nothing that nobody meant."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.problems import LessonError, Problem
from generator.read.library import read_library
from tests.project import GOOD, problems, put, site

ROW = "        - [{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]\n"
DAY = """\
  - day:
      person: {}
      ate: [{{food: apple-raw, amount: 1 medium}}]
      did: [Walked]
"""


def told(found: list[Problem]) -> list[str]:
    return [f"{one.place.line}:{one.place.column} {one.what}: {one.hint}" for one in found]


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        (
            "grades: 3-5",
            "video: {file: 'https://films.example/x'}\ngrades: 3-5",
            "3:15 `https://films.example/x` is an address, and `file:` takes the name of a file beside the lesson: write `elsewhere:` before it",
        ),
        (
            "grades: 3-5",
            "video: {elsewhere: 'https://films.example/x', captions: {english: x.vtt}}\ngrades: 3-5",
            "3:58 `english` is no language tag: write `en`",
        ),
        (
            "grades: 3-5",
            "video: {elsewhere: 'https://films.example/x', captions: {Español: x.vtt}}\ngrades: 3-5",
            "3:58 `Español` is no language tag: write `es`",
        ),
        (ROW, ROW * 17, "33:11 `rows` has 18 entries, and at most 12 are taken: take some out"),
        (
            "  - talk:\n",
            DAY.format("most days") + "  - talk:\n",
            "30:15 `person` must be made of keys and values, not `most days`: write `name:`, `age:`, `sex:` and `activity:` below it",
        ),
        (
            "  - talk:\n",
            DAY.format("{name: Ana, age: 40, sex: woman}") + "  - talk:\n",
            "30:15 `activity:` is missing: add `activity:` inside `person`: `inactive`, `low active`, `active` or `very active`",
        ),
        ("food: apple-raw", "food: pear", "did you mean `pear-raw` or `pear-canned`?"),
        ("food: apple-raw", "food: aple", "did you mean `apple-raw`?"),
        ("food: apple-raw", "food: corn flakes", "use an id that is there; look for one with"),
        ("food: apple-raw", "food: rice bowl", "use an id that is there; look for one with"),
    ],
    ids=["an address as a file", "a language's name", "its own name", "too many rows", "no keys",
         "a word that is missing", "no pearled barley", "a letter", "no tamale", "no noodles"],
)  # fmt: skip
def test_of_a_lesson(tmp_path: Path, old: str, new: str, says: str) -> None:
    found = told(problems(tmp_path, GOOD.replace(old, new)))
    assert [one for one in found if says in one], found


def test_a_file_whose_name_differs_in_capitals(tmp_path: Path) -> None:
    path = put(tmp_path, "")
    (tmp_path / path).with_name("Walk.MP4").write_bytes(b"")
    (found,) = told(problems(tmp_path, GOOD.replace("grades:", "video: {file: walk.mp4}\ngrades:")))
    assert found == (
        "3:15 there is no file `walk.mp4` beside the lesson: "
        "`Walk.MP4` is there, and capitals count; write the name as it is on the disk"
    )


@pytest.mark.parametrize(
    ("written", "says"),
    [
        ("[English, Spanish]", ["`English` is no language tag: write `en`", "`Spanish` is no language tag: write `es`"]),
        ("[en_US, es]", ["`en_US` is no language tag: write `en-US`"]),
        ("[klingonish]", ["`klingonish` is no language tag: write language tags such as en or es"]),
    ],
)  # fmt: skip
def test_the_languages_of_a_site(tmp_path: Path, written: str, says: list[str]) -> None:
    file = site(tmp_path) / "site_data/site.yaml"
    file.write_text(file.read_text("utf-8").replace("[en, es]", written), "utf-8")
    with pytest.raises(LessonError) as caught:
        read_library(tmp_path)
    assert [f"{one.what}: {one.hint}" for one in caught.value.problems] == says


@pytest.mark.parametrize("key", ["address", "license"])
def test_a_key_that_may_be_left_empty(tmp_path: Path, key: str) -> None:
    file = site(tmp_path) / "site_data/site.yaml"
    lines = [one for one in file.read_text("utf-8").splitlines() if not one.startswith(key)]
    file.write_text("\n".join([*lines, f"{key}:"]), "utf-8")
    assert getattr(read_library(tmp_path).site, key) == ""
