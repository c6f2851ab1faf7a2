"""Every way a download can be wrong: told with file and line, and the old index stays."""

from __future__ import annotations

import sqlite3
import subprocess
import sys
import zipfile
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from generator.problems import LessonError, Place, Problem
from generator.read.fooddata import archive
from generator.read.fooddata.importing import import_foods
from generator.read.fooddata.index import INDEX, opened_index, record
from tests.read.fooddata.official_zip import (
    FOOD,
    FOOD_NUTRIENT,
    NUTRIENT,
    TABLES,
    Table,
    csv_text,
    small_zip,
)

SITE = Path(__file__).parents[3]


def load(root: Path) -> None:
    """Fill the index that has to stay."""
    import_foods(root, small_zip(root / "download.zip"), lambda _read, _total: None)


def refused(root: Path, file: Path) -> tuple[Problem, ...]:
    with pytest.raises(LessonError) as error:
        import_foods(root, file, lambda _read, _total: None)
    return error.value.problems


def with_row(name: str, *row: str) -> dict[str, Table | bytes | None]:
    return {name: (*TABLES[name], row)}


def without_column(name: str, column: str) -> dict[str, Table | bytes | None]:
    at = TABLES[name][0].index(column)
    return {name: tuple((*row[:at], *row[at + 1 :]) for row in TABLES[name])}


def portion(fdc: str, amount: str, unit: str, grams: str) -> dict[str, Table | bytes | None]:
    return with_row("food_portion.csv", "9", fdc, "1", amount, unit, "", "cup", grams)


def amount(cell: str) -> dict[str, Table | bytes | None]:
    return with_row("food_nutrient.csv", "9", "102", "1003", cell, "1")


def unit(cell: str) -> dict[str, Table | bytes | None]:
    rows = [(*row[:2], cell, *row[3:]) if row[0] == "1093" else row for row in NUTRIENT]
    return {"nutrient.csv": rows}


WRONG_CELLS = {
    "NaN": (amount("NaN"), "food_nutrient.csv", 9, "not `NaN`"),
    "infinite": (amount("Infinity"), "food_nutrient.csv", 9, "not `Infinity`"),
    "negative amount": (amount("-0.5"), "food_nutrient.csv", 9, "not `-0.5`"),
    "words for a figure": (amount("trace"), "food_nutrient.csv", 9, "not `trace`"),
    "carbohydrate that is less than all the food": (
        with_row("food_nutrient.csv", "9", "102", "1005", "-100", "1"),
        "food_nutrient.csv",
        9,
        "`amount` must be a figure above -100, not `-100`",
    ),
    "a figure beyond all sense": (amount("1e400"), "food_nutrient.csv", 9, "not `1e400`"),
    "other digits": (amount("٣"), "food_nutrient.csv", 9, "not `٣`"),
    "nutrient no number": (
        with_row("food_nutrient.csv", "9", "102", "salt", "1", "1"),
        "food_nutrient.csv",
        9,
        "`nutrient_id` must be a whole number, not `salt`",
    ),
    "two amounts of one nutrient": (
        with_row("food_nutrient.csv", "9", "101", "1008", "133", "1"),
        "food_nutrient.csv",
        9,
        "the food 101 has two different amounts of nutrient 1008",
    ),
    "negative grams": (portion("101", "1", "9999", "-5"), "food_portion.csv", 5, "not `-5`"),
    "grams NaN": (portion("101", "1", "9999", "nan"), "food_portion.csv", 5, "not `nan`"),
    "grams blank": (portion("101", "1", "9999", ""), "food_portion.csv", 5, "not ``"),
    "unknown food": (portion("7", "1", "9999", "5"), "food_portion.csv", 5, "food 7, which"),
    "unknown unit": (portion("101", "1", "55", "5"), "food_portion.csv", 5, "unit 55 is not known"),
    "one id twice": (
        with_row("food.csv", "101", "sr_legacy_food", "Again", "1", "2019-04-01"),
        "food.csv",
        4,
        "the food 101 is there twice; the first is on line 2",
    ),
    "id no number": (
        with_row("food.csv", "x1", "sr_legacy_food", "Odd", "1", "2019-04-01"),
        "food.csv",
        4,
        "`fdc_id` must be a whole number, not `x1`",
    ),
    "no day": (
        with_row("food.csv", "9", "sr_legacy_food", "Odd", "1", "spring"),
        "food.csv",
        4,
        "must be a day, not `spring`",
    ),
    "a cell too few": (with_row("food.csv", "9"), "food.csv", 4, "this line has 1 cells"),
    "sodium in grams": (unit("G"), "nutrient.csv", 12, "is in `G`, and we know it in mg only"),
    "an unknown unit": (unit("SPOON"), "nutrient.csv", 12, "is in `SPOON`"),
    "no sodium": (
        {"nutrient.csv": [row for row in NUTRIENT if row[0] != "1093"]},
        "nutrient.csv",
        1,
        "the nutrient 1093 (sodium) is missing",
    ),
    "missing column": (
        without_column("food_nutrient.csv", "amount"),
        "food_nutrient.csv",
        1,
        "the column `amount` is missing",
    ),
    "empty file": ({"measure_unit.csv": b""}, "measure_unit.csv", 1, "the column `id` is missing"),
    "another encoding": (
        {"food.csv": csv_text(FOOD).replace("“home”", "purée").encode("latin-1")},
        "food.csv",
        3,
        "this line is not in UTF-8",
    ),
    "an open quote": (
        {"measure_unit.csv": b'"id","name"\n"1","cup\n'},
        "measure_unit.csv",
        2,
        "a quote or a comma stands wrong here",
    ),
    "another kind of food": (
        {"food.csv": (FOOD[0], ("1", "experimental_food", "Crisps", "1", "2020-01-01"))},
        "food.csv",
        1,
        "no food of SR Legacy, Foundation, FNDDS, branded foods is in this zip; it holds exper",
    ),
}


@pytest.mark.parametrize(
    ("changed", "member", "line", "said"),
    [pytest.param(*case, id=name) for name, case in WRONG_CELLS.items()],
)
def test_a_wrong_cell_is_told_with_its_line_and_nothing_is_lost(
    tmp_path: Path, changed: dict[str, Table | bytes | None], member: str, line: int, said: str
) -> None:
    load(tmp_path)
    before = (tmp_path / INDEX).read_bytes()
    file = small_zip(tmp_path / "wrong.zip", changed)
    problems = refused(tmp_path, file)
    assert problems[0].place == Place(f"{file.as_posix()}/{member}", line)
    assert said in problems[0].what
    assert (tmp_path / INDEX).read_bytes() == before
    assert [one.name for one in (tmp_path / ".cache").iterdir()] == ["foods.sqlite"]


def test_reading_stops_at_the_twentieth_problem(tmp_path: Path) -> None:
    rows = (FOOD_NUTRIENT[0], *[(str(n), "101", "1008", "bad", "1") for n in range(1000)])
    file = small_zip(tmp_path / "wrong.zip", {"food_nutrient.csv": rows})
    assert len(refused(tmp_path, file)) == 20


def patched(offset: int, value: bytes) -> Callable[[Path], None]:
    """Writes over a field of the first entry of the zip's central directory (APPNOTE.TXT 4.3.12)."""

    def patch(file: Path) -> None:
        raw = bytearray(small_zip(file).read_bytes())
        at = raw.index(b"PK\x01\x02") + offset
        raw[at : at + len(value)] = value
        file.write_bytes(raw)

    return patch


def truncated(file: Path) -> None:
    file.write_bytes(small_zip(file).read_bytes()[:-60])


def damaged(file: Path) -> None:
    raw = bytearray(small_zip(file).read_bytes())
    raw[60:70] = bytes(10)
    file.write_bytes(raw)


def with_member(name: str, content: bytes = b"x") -> Callable[[Path], None]:
    def add(file: Path) -> None:
        small_zip(file)
        with zipfile.ZipFile(file, "a", zipfile.ZIP_DEFLATED) as archive:
            archive.writestr(name, content)

    return add


def foreign(file: Path) -> None:
    with zipfile.ZipFile(file, "w") as archive:
        archive.writestr("letter.txt", "hello")


THREE_GB = (3_000_000_000).to_bytes(4, "little")
WRONG_ZIPS: dict[str, tuple[Callable[[Path], object], str]] = {
    "no zip": (lambda file: file.write_bytes(b"hello"), "this is not a whole zip file"),
    "empty": (lambda file: file.write_bytes(b""), "this is not a whole zip file"),
    "nothing there": (lambda _: None, "there is no such file"),
    "broken off": (truncated, "this is not a whole zip file"),
    "damaged": (damaged, "this file is damaged inside the zip"),
    "locked": (patched(8, b"\x01\x00"), "`food.csv` is locked with a password"),
    "3 GB out of nothing": (patched(24, THREE_GB), "`food.csv` would unfold to 3.0 GB"),
    "a file of nothing but zeros": (
        with_member("big.csv", bytes(11_000_000)),
        "`big.csv` would unfold to 11 MB",
    ),
    "a size that lies": (patched(24, b"\x10\x00\x00\x00"), "this file is damaged inside the zip"),
    "climbs out": (with_member("../food.csv"), "names a file outside itself: `../food.csv`"),
    "climbs out inside": (with_member("a/../../x"), "names a file outside itself"),
    "absolute": (with_member("/etc/x"), "names a file outside itself"),
    "a drive": (with_member("C:\\x"), "names a file outside itself"),
    "two of one name": (with_member("folder/food.csv"), "two files called `food.csv`"),
    "foreign": (foreign, "this zip is no FoodData Central CSV download"),
    "a file is missing": (
        lambda file: small_zip(file, {"food_nutrient.csv": None}),
        "`food_nutrient.csv` is missing from the zip",
    ),
}


@pytest.mark.parametrize(
    ("make", "said"), [pytest.param(*case, id=name) for name, case in WRONG_ZIPS.items()]
)
def test_a_wrong_zip_is_refused_and_the_old_index_stays(
    tmp_path: Path, make: Callable[[Path], object], said: str
) -> None:
    load(tmp_path)
    before = (tmp_path / INDEX).read_bytes()
    file = tmp_path / "wrong.zip"
    make(file)
    there = sorted(tmp_path.rglob("*"))
    problems = refused(tmp_path, file)
    assert said in problems[0].what
    assert problems[0].hint
    assert (tmp_path / INDEX).read_bytes() == before
    assert sorted(tmp_path.rglob("*")) == there


def test_a_first_import_that_is_refused_leaves_no_index(tmp_path: Path) -> None:
    refused(tmp_path, small_zip(tmp_path / "wrong.zip", amount("NaN")))
    assert list((tmp_path / ".cache").iterdir()) == []


def test_a_zip_that_holds_too_much_is_not_unfolded(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(archive, "LARGEST", 2_000_000_000)
    file = tmp_path / "wrong.zip"
    patched(20, (100_000_000).to_bytes(4, "little") + THREE_GB)(file)
    said = refused(tmp_path, file)[0].what
    assert said == "the files in this zip hold 3.0 GB, more than 2.0 GB"


def test_a_damaged_index_is_made_anew_and_said_when_searched(tmp_path: Path) -> None:
    (tmp_path / ".cache").mkdir()
    (tmp_path / INDEX).write_bytes(b"not a database, and longer than sixteen bytes" * 100)
    with pytest.raises(LessonError, match="cannot be read"), opened_index(tmp_path):
        pass
    load(tmp_path)
    with opened_index(tmp_path) as index:
        assert record(index, 101) is not None


def test_an_index_that_knows_less_is_told_and_not_believed(tmp_path: Path) -> None:
    """One made before a measure came would call all its figures blank."""
    load(tmp_path)
    with closing(sqlite3.connect(tmp_path / INDEX)) as index:
        index.execute("PRAGMA user_version = 1")
    with pytest.raises(LessonError, match="another version") as error, opened_index(tmp_path):
        pass
    assert "foods import FILE.zip" in error.value.problems[0].hint
    load(tmp_path)
    with opened_index(tmp_path) as index:
        assert record(index, 101) is not None


_KILLED = """
import os, sys
from pathlib import Path
from generator.read.fooddata.importing import import_foods
import_foods(Path(sys.argv[1]), Path(sys.argv[2]), lambda read, total: os._exit(9))
"""
"""An import that is gone at the first step of progress, with no moment to clear up."""


def test_an_import_that_is_killed_leaves_the_old_index(tmp_path: Path) -> None:
    load(tmp_path)
    before = (tmp_path / INDEX).read_bytes()
    file = small_zip(tmp_path / "again.zip")
    command = [sys.executable, "-c", _KILLED, str(tmp_path), str(file)]
    assert subprocess.run(command, check=False, cwd=SITE).returncode == 9
    assert (tmp_path / INDEX).read_bytes() == before
    assert (tmp_path / f"{INDEX}.new").exists(), "it was in the middle of it"
    load(tmp_path)
    assert [one.name for one in (tmp_path / ".cache").iterdir()] == ["foods.sqlite"]


def test_a_folder_that_cannot_be_written_is_a_sentence(tmp_path: Path) -> None:
    (tmp_path / ".cache").write_text("a file where the folder should be")
    file = small_zip(tmp_path / "a.zip")
    assert "the index of foods cannot be written" in refused(tmp_path, file)[0].what
