"""A file is written whole or not at all: a full disk leaves no half of it, and nothing beside it."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from generator.problems import LessonError
from generator.write.new_lesson import STARTER, new_lesson
from generator.write.recorded import write_recorded
from generator.write.translation_file import write_draft
from generator.write.whole import write_whole


@pytest.fixture
def full(monkeypatch: pytest.MonkeyPatch) -> None:
    """A disk that has room for half of what is written."""
    write = Path.write_text

    def half(file: Path, text: str, *args: str, **others: str) -> int:
        write(file, text[: len(text) // 2], *args, **others)
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr(Path, "write_text", half)


def test_it_takes_the_place_of_the_old_one(tmp_path: Path) -> None:
    for text in ("one", "two\nlines"):
        assert write_whole(tmp_path / "a.yaml", text).read_text("utf-8") == text
    assert [file.name for file in tmp_path.iterdir()] == ["a.yaml"]


@pytest.mark.usefixtures("full")
def test_a_full_disk_leaves_the_old_one(tmp_path: Path) -> None:
    (tmp_path / "recorded.yaml").write_bytes(b"old")
    with pytest.raises(OSError, match="No space"):
        write_recorded(tmp_path, "a new record")
    assert (tmp_path / "recorded.yaml").read_bytes() == b"old"
    assert len(list(tmp_path.iterdir())) == 1


@pytest.mark.usefixtures("full")
def test_a_translation_begun_on_a_full_disk_can_be_begun_again(tmp_path: Path) -> None:
    for _ in range(2):
        with pytest.raises(OSError, match="No space"):
            write_draft(tmp_path, "lesson.es.yaml", "title: Sopa")
    assert not list(tmp_path.iterdir())


def test_a_lesson_begun_on_a_full_disk_can_be_begun_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, request: pytest.FixtureRequest
) -> None:
    (tmp_path / "site_data").mkdir()
    (tmp_path / STARTER).write_text("title: TITLE\n", "utf-8")
    (tmp_path / "lessons").mkdir()
    request.getfixturevalue("full")
    with pytest.raises(OSError, match="No space"):
        new_lesson(tmp_path, "Soup", ())
    assert not list((tmp_path / "lessons").iterdir())
    monkeypatch.undo()
    new_lesson(tmp_path, "Soup", ())
    with pytest.raises(LessonError, match="this lesson is there already"):
        new_lesson(tmp_path, "Soup", ())
