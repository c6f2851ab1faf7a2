"""Files as teachers send them: every row is counted or told, and no label is kept anywhere."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.read.finish_codes.file import LeftOut, read_file
from generator.read.finish_codes.opened import LONGEST_LINE
from generator.read.finish_codes.records import Record, Records
from generator.read.finish_codes.row import CodeRow

HEAD = "label,lesson,numbers,code,stops,answers,before,after,minutes"
ROW = "soup-night,A1B2,7K3M-9QRT-4,hello soups,soups.gap=first,guess=wrong,guess=right,10"
WHOLE = CodeRow("soup-night", "A1B2", "7K3M9QRT4", "hello soups", "guess=wr", "soups.gap=f", "10")
LABEL = "Zoë Pérez"


def read(folder: Path, data: bytes) -> list[CodeRow | LeftOut]:
    file = folder / "class.csv"
    file.write_bytes(data)
    return list(read_file(file, "class.csv"))


def told(folder: Path, *lines: str) -> list[str]:
    """What is left out of a file of these lines, none of which repeats what stands in a cell."""
    found = read(folder, "".join(f"{line}\n" for line in lines).encode())
    said = [str(one) for one in found if isinstance(one, LeftOut)]
    assert not any(LABEL in one for one in said)
    return said


@pytest.mark.parametrize("ending", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("separator", [",", ";", "\t"])
@pytest.mark.parametrize(
    "encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"]
)
def test_encodings_separators_and_line_ends(
    tmp_path: Path, encoding: str, separator: str, ending: str
) -> None:
    lines = (HEAD, f"{LABEL},{ROW}", "", f"Ñandú,{ROW}")
    text = "".join(f"{line.replace(',', separator)}{ending}" for line in lines)
    assert read(tmp_path, text.encode(encoding)) == [WHOLE, WHOLE]


@pytest.mark.parametrize(
    ("minutes", "begins"),
    [("under 5", "0"), ("5 to 9", "5"), ("45 to 59", "45"), ("60 or more", "60"), ("10", "10")],
)
def test_minutes_in_steps(tmp_path: Path, minutes: str, begins: str) -> None:
    text = f"{HEAD}\nA,{ROW.removesuffix('10')}{minutes}\n"
    assert read(tmp_path, text.encode()) == [replace(WHOLE, minutes=begins)]


def test_line_ends_of_both_kinds_in_one_file(tmp_path: Path) -> None:
    text = f"{HEAD}\r\nA,{ROW}\nB,{ROW}\r\nC,{ROW}"
    assert read(tmp_path, text.encode()) == [WHOLE] * 3


def test_columns_in_any_order_and_none_of_the_label(tmp_path: Path) -> None:
    head = "Minutes,after,before,answers,stops,code,numbers,lesson,remarks"
    row = "10,guess=right,guess=wrong,soups.gap=first,hello soups,7k3m-9qrt-4,A1B2,soup-night,ill last week"
    assert read(tmp_path, f"sep=,\n{head}\n{row}\n".encode()) == [WHOLE]


def test_a_label_over_several_lines(tmp_path: Path) -> None:
    text = f'{HEAD}\n"{LABEL}\nhas ""two"" names, and\na line",{ROW}\nB,{ROW}\n'
    assert read(tmp_path, text.encode()) == [WHOLE, WHOLE]


def test_a_quote_that_never_closes_takes_one_line_with_it(tmp_path: Path) -> None:
    text = "".join(f"{line}\n" for line in (HEAD, f'"{LABEL},{ROW}', *[f"B,{ROW}"] * 99))
    found = read(tmp_path, text.encode())
    assert found[1:] == [WHOLE] * 99
    assert str(found[0]).startswith(
        "class.csv:2: a quote is opened in this line and not closed: read the code"
    )


def test_two_quotes_that_stand_wrong_take_two_lines_with_them(tmp_path: Path) -> None:
    said = told(tmp_path, HEAD, f'5" tall,{ROW}', f"B,{ROW}", f'6" tall,{ROW}', f"C,{ROW}")
    assert [one[:12] for one in said] == ["class.csv:2:", "class.csv:4:"]


def test_a_huge_cell(tmp_path: Path) -> None:
    said = told(tmp_path, HEAD, f"{LABEL * LONGEST_LINE},{ROW}", f"B,{ROW}")
    assert [one.partition(": read")[0] for one in said] == [
        "class.csv:2: this line is far too long"
    ]
    assert read(tmp_path, f"{HEAD}\n{'x' * 100_000},{ROW}\nB,{ROW}".encode())[1:] == [WHOLE]


@pytest.mark.parametrize(
    ("cell", "holds", "says"),
    [
        (1, LABEL, "the cell `lesson` holds no id of a lesson"),
        (1, "", "the cell `lesson` is empty"),
        (2, "=1+1", "the cell `numbers` holds no mark of a lesson's numbers"),
        (3, LABEL, "the cell `code` holds no finish code"),
        (4, f"hello {LABEL}", "the cell `stops` holds something else than ids of stops"),
        (5, "soups.gap=maybe", "the cell `answers` holds something else than answers such as"),
        (5, "a=no a=first", "the cell `answers` names one of them twice"),
        (6, f"{LABEL}=right", "the cell `before` holds something else than answers"),
        (7, "guess=maybe", "the cell `after` holds something else than answers"),
        (7, "other=right", "`before` and `after` name other questions, or one of them twice"),
        (7, "guess=right guess=wrong", "`before` and `after` name other questions"),
        (8, "ten", "the cell `minutes` holds no minutes, such as 5 to 9"),
        (8, "٣", "the cell `minutes` holds no minutes, such as 5 to 9"),
    ],
)
def test_cells_that_cannot_be_read(tmp_path: Path, cell: int, holds: str, says: str) -> None:
    cells = [LABEL, *ROW.split(",")]
    cells[cell] = holds
    [said] = told(tmp_path, HEAD, f"B,{ROW}", ",".join(cells))
    assert said.startswith(f"class.csv:3: {says}")


def test_rows_with_other_cells_than_the_first_line(tmp_path: Path) -> None:
    said = told(tmp_path, HEAD, f"{LABEL}, {LABEL},{ROW}", ROW)
    assert [one.partition(": read")[0] for one in said] == [
        "class.csv:2: this line has 10 cells, and the first line has 9",
        "class.csv:3: this line has 8 cells, and the first line has 9",
    ]


def test_cells_made_harmless_are_read_as_they_were(tmp_path: Path) -> None:
    assert read(tmp_path, f"{HEAD}\n'=A1,{ROW.replace('hello', chr(39) + 'hello')}\n".encode()) == [
        WHOLE
    ]


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b"", "class.csv:1: this file is empty"),
        (b"\xef\xbb\xbf", "class.csv:1: this is no CSV file of finish codes"),
        (b"PK\x03\x04rest", "class.csv:1: this is a spreadsheet and no CSV file"),
        (b"%PDF-1.7\n\x00\xff\xfe\x80", "class.csv:1: this is no CSV file of finish codes"),
        (bytes(range(256)) * 999, "class.csv:1: this is no CSV file of finish codes"),
        (b"name,age\nZo,9\n", "class.csv:1: this is no CSV file of finish codes"),
        (b"label,lesson,code\nZo,a,b\n", "class.csv:1: the column `numbers` is missing"),
        (HEAD.encode(), "class.csv:1: no row stands below the first line"),
    ],
)
def test_files_that_hold_no_rows(tmp_path: Path, data: bytes, says: str) -> None:
    [found] = read(tmp_path, data)
    assert str(found).startswith(says)
    assert str(found).count("\n") == 0


def test_a_file_that_is_not_there(tmp_path: Path) -> None:
    [found] = read_file(tmp_path / "none.csv", "none.csv")
    assert str(found).startswith("none.csv:1: this file cannot be read (no such file or directory)")
    [folder] = read_file(tmp_path, "folder")
    assert str(folder).startswith("folder:1: this file cannot be read (is a directory)")


LINE = st.text(alphabet='ab",;\t \r=', max_size=8)


@given(st.lists(LINE, max_size=12))
def test_every_line_is_in_one_row_or_left_out(lines: list[str]) -> None:
    """Whatever quotes stand where, a line is read, or told, and never both."""
    feed = iter([f"{line}\n" for line in lines])
    seen = [one.line for one in Records(feed).read(",", 3)]
    assert seen == sorted(set(seen))
    assert next(feed, None) is None
    wanted = {number for number, line in enumerate(lines, 1) if line.strip() and '"' not in line}
    spans = list(Records(iter([f"{line}\n" for line in lines])).read(",", 3))
    inside = {
        line
        for one in spans
        if isinstance(one, Record)
        for line in range(one.line, one.line + sum(c.count("\n") for c in one.cells) + 1)
    }
    assert wanted <= inside | set(seen)
