"""The list of the longest test files names files that are there, and they do begin first."""

from __future__ import annotations

from pathlib import Path

from tests.longest import LONGEST, place

TESTS = Path(__file__).parents[1]


def test_each_is_there_once() -> None:
    assert [name for name in LONGEST if not (TESTS / name).is_file()] == []
    assert len(set(LONGEST)) == len(LONGEST)


def test_the_longest_come_before_all_others() -> None:
    assert place(TESTS / LONGEST[0]) < place(TESTS / LONGEST[-1]) < place(Path(__file__))
