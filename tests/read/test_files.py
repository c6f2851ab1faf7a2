"""A file that cannot be had as text is told, with the place of the byte at fault."""

from __future__ import annotations

from pathlib import Path

import pytest

from generator.problems import Problem
from generator.read.files import LARGEST_TEXT, read_text


def told(root: Path, data: bytes) -> Problem:
    (root / "f.yaml").write_bytes(data)
    found = read_text(root, "f.yaml")
    assert isinstance(found, Problem)
    return found


@pytest.mark.parametrize(
    ("data", "at"),
    [
        (b"title: caf\xe9\n", "1:11"),
        (b"a: 1\nb: \xc3\xa9\xff\n", "2:5"),
        (b"\xef\xbb\xbfa: \xff\n", "1:4"),
        (b"\xff\xfea\x00", "1:1"),
    ],
    ids=["Latin-1", "behind a wide sign", "behind a byte order mark", "UTF-16"],
)
def test_other_encodings(tmp_path: Path, data: bytes, at: str) -> None:
    problem = told(tmp_path, data)
    assert str(problem.place) == f"f.yaml:{at}"
    assert "UTF-8" in problem.what


def test_a_byte_order_mark_is_no_part_of_the_text(tmp_path: Path) -> None:
    (tmp_path / "f.yaml").write_bytes(b"\xef\xbb\xbftitle: x\n")
    assert read_text(tmp_path, "f.yaml") == "title: x\n"


def test_a_huge_file_is_not_read(tmp_path: Path) -> None:
    assert "too large" in told(tmp_path, b"#" * (LARGEST_TEXT + 1)).what


def test_a_missing_file(tmp_path: Path) -> None:
    found = read_text(tmp_path, "f.yaml")
    assert isinstance(found, Problem)
    assert "missing" in found.what


def test_a_folder_under_the_file_s_name(tmp_path: Path) -> None:
    (tmp_path / "f.yaml").mkdir()
    assert isinstance(read_text(tmp_path, "f.yaml"), Problem)
