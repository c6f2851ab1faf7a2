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
        (b"a: 1\rb: \xff\n", "2:4"),
        (b"\xff\xfea\x00", "1:1"),
    ],
    ids=[
        "Latin-1",
        "behind a wide sign",
        "behind a byte order mark",
        "lines of an old Mac",
        "UTF-16",
    ],
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


def test_an_accent_of_its_own_becomes_one_sign_with_its_letter(tmp_path: Path) -> None:
    """Unicode Standard Annex 15, form C: U+0065 U+0301 is U+00E9."""
    (tmp_path / "f.yaml").write_text("a: cafe\u0301 n\u0303\n", "utf-8")
    assert read_text(tmp_path, "f.yaml") == "a: caf\u00e9 \u00f1\n"


def test_a_place_behind_an_accent_of_its_own_counts_letters(tmp_path: Path) -> None:
    assert str(told(tmp_path, "e\u0301: ".encode() + b"\xff\n").place) == "f.yaml:1:4"


def test_a_file_that_may_not_be_opened(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(_: Path) -> bytes:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "read_bytes", refuse)
    problem = told(tmp_path, b"a: 1\n")
    assert "cannot be opened (Permission denied)" in problem.what


@pytest.mark.parametrize("linked", ["lessons/x/f.yaml", "lessons/x"])
def test_no_link_below_lessons_is_followed(tmp_path: Path, linked: str) -> None:
    outside = tmp_path / "outside"
    outside.mkdir()
    (outside / "f.yaml").write_text("a: 1\n", "utf-8")
    place = tmp_path / linked
    place.parent.mkdir(parents=True)
    place.symlink_to(outside / "f.yaml" if linked.endswith("yaml") else outside)
    found = read_text(tmp_path, "lessons/x/f.yaml")
    assert isinstance(found, Problem)
    assert "no link is followed" in found.what
