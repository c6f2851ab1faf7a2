"""Changes of site_data/foods.yaml that leave every other byte alone."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from generator.problems import LessonError, Place, Problem
from generator.read.library import read_library
from generator.write.foods_file import FOODS, change_foods, with_entry
from generator.write.foods_values import Addition, Edit, with_values

SITE = Path(__file__).parents[2]
TEXT = """\
# A note on top.
source: {name: S}
foods:
  # fruit
  apple: # the first one
    group: fruit
    fdc: 1

  # A note on the pear.
  pear:
    group: "fruit" # quoted
    fdc: 2
      # a deep note
  # grains
  oats:
    group: grains
    fdc: 3
# A note at the end.
"""
NEW = ("kiwi:", "  group: fruit", "  fdc: 9")
ADDED = "  kiwi:\n    group: fruit\n    fdc: 9\n"


@pytest.mark.parametrize(
    ("id_", "group", "before"),
    [
        pytest.param("kiwi", "fruit", "\n  # A note on the pear.", id="between, after its fellow"),
        pytest.param("aa", "fruit", "  apple: # the first", id="before the first of its group"),
        pytest.param("zz", "fruit", "  # grains", id="after the last of its group"),
        pytest.param("zz", "grains", "# A note at the end", id="before the closing note"),
    ],
)
def test_an_entry_is_put_in_its_place(id_: str, group: str, before: str) -> None:
    lines = (f"{id_}:", f"  group: {group}", "  fdc: 9")
    added = "".join(f"  {line}\n" for line in lines)
    after = with_entry(TEXT, id_, group, lines)
    assert after == TEXT.replace(before, added + before, 1)


def test_a_new_group_gets_its_heading() -> None:
    after = with_entry(TEXT, "kiwi", "drinks", NEW)
    assert after == TEXT.replace("# A note at the end", f"  # drinks\n{ADDED}# A note at the end")


def test_a_file_without_a_last_line_end_stays_readable() -> None:
    text = TEXT.removesuffix("# A note at the end.\n").removesuffix("\n")
    assert with_entry(text, "zz", "grains", ("zz:",)) == f"{text}\n  zz:\n"


def test_keys_after_the_foods_are_no_foods() -> None:
    text = "foods:\n  a:\n    group: x\nother:\n  b:\n    group: x\n"
    assert with_entry(text, "c", "x", ("c:",)) == text.replace("other:", "  c:\nother:")


@pytest.mark.parametrize("text", ["foods: {a: {group: x}}\n", "", "source: 1\n"])
def test_a_file_laid_out_otherwise_is_refused(text: str) -> None:
    with pytest.raises(LessonError, match="no entry can be found"):
        with_entry(text, "kiwi", "fruit", NEW)


def test_the_first_food_of_a_file_that_was_begun() -> None:
    assert with_entry("foods: # mine\n", "kiwi", "fruit", ("kiwi:", "  group: fruit")) == (
        "foods: # mine\n  # fruit\n  kiwi:\n    group: fruit\n"
    )


def test_values_change_where_they_stand_and_keep_their_notes() -> None:
    text = "a: {x: 1, y: 10} # 1, 10\nb: 'no value' # as it is\nc: \"S, 1\"\n"
    edits = [
        Edit(1, 8, "1", "2.5"),
        Edit(1, 14, "10", "no value"),
        Edit(2, 4, "no value", "7"),
        Edit(3, 4, "S, 1", "S, 2"),
    ]
    assert with_values(text, edits) == (
        'a: {x: 2.5, y: no value} # 1, 10\nb: 7 # as it is\nc: "S, 2"\n'
    )


def test_a_value_that_is_not_there_stops_everything() -> None:
    with pytest.raises(LessonError, match="cannot be changed here"):
        with_values("a: 1\n", [Edit(1, 4, "2", "3")])
    with pytest.raises(LessonError, match="nothing can be added behind `2` here") as error:
        with_values("a: {b: 1}\n", [], [Addition(1, 8, "2", {"iron": "3"}, (1, 4))])
    assert error.value.problems[0].hint == "write iron: 3"


@pytest.mark.parametrize(
    ("text", "addition", "after"),
    [
        pytest.param(
            "a: {x: 1, y: 10} # y\n",
            Addition(1, 14, "10", {"iron": "no value", "z": "2.5"}, (1, 4)),
            "a: {x: 1, y: 10, iron: no value, z: 2.5} # y\n",
            id="in braces",
        ),
        pytest.param(
            "a:\n  x: 1\n  y: 10 # y\nb: 1\n",
            Addition(3, 6, "10", {"iron": "3", "z": "2.5"}, (2, 3)),
            "a:\n  x: 1\n  y: 10 # y\n  iron: 3\n  z: 2.5\nb: 1\n",
            id="on lines of their own",
        ),
        pytest.param(
            "a: {x: 1,\n    y: 10\n}\n",
            Addition(2, 8, "10", {"iron": "3"}, (1, 4)),
            "a: {x: 1,\n    y: 10, iron: 3\n}\n",
            id="in braces over several lines",
        ),
    ],
)
def test_keys_are_added_behind_the_last_one(text: str, addition: Addition, after: str) -> None:
    assert with_values(text, [], [addition]) == after


def test_a_value_is_changed_and_added_behind_at_once() -> None:
    edits = [Edit(1, 8, "1", "25"), Edit(1, 14, "10", "100")]
    added = Addition(1, 14, "10", {"iron": "3"}, (1, 4))
    assert with_values("a: {x: 1, y: 10}", edits, [added]) == "a: {x: 25, y: 100, iron: 3}"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    shutil.copytree(SITE / "site_data", tmp_path / "site_data")
    return tmp_path


def test_line_ends_stay(root: Path) -> None:
    raw = (root / FOODS).read_bytes().replace(b"\n", b"\r\n")
    (root / FOODS).write_bytes(raw)
    change_foods(root, lambda text: text.replace("Arepa, es", "Corn cake, es"), read_library)
    assert (root / FOODS).read_bytes() == raw.replace(b"Arepa, es", b"Corn cake, es")


def test_a_change_that_reads_wrong_leaves_the_old_file(root: Path) -> None:
    before = (root / FOODS).read_bytes()
    with pytest.raises(LessonError, match="energy"):
        change_foods(root, lambda text: text.replace("energy: 52,", "energy: -1,"), read_library)
    assert (root / FOODS).read_bytes() == before


def test_a_disk_that_fails_leaves_the_old_file(root: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = (root / FOODS).read_bytes()

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "replace", full)
    with pytest.raises(OSError, match="No space"):
        change_foods(root, lambda text: text + "# more\n", lambda _: None)
    assert (root / FOODS).read_bytes() == before
    assert not list((root / "site_data").glob(".*"))


def test_a_refusal_names_the_file() -> None:
    problem = Problem(Place(FOODS), "no entry can be found in this file")
    with pytest.raises(LessonError) as error:
        with_entry("", "a", "b", ())
    assert error.value.problems[0].place == problem.place
