"""A lesson with as many rows as moves, built for the tests of printed pages."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from pathlib import Path

import pytest

from tests.made import page_outputs, write_files
from tests.project import ROOT, library

ROWS = 12
"""The most rows of one compare stop."""
SIDES = "[Packed at home before the walk, From the kiosk at the old river bridge]"
FOODS = "[{food: apple-raw, amount: 1 medium}, {food: apple-pie, amount: 1 slice}]"


def built_lesson(root: Path, moves: list[str]) -> Path:
    """Build the lesson in an empty folder, with the site's own library, and give its pages' folder."""
    write_lesson(root, moves)
    write_files(page_outputs(root), root / "site")
    return root / "site" / "print"


def write_lesson(root: Path, moves: list[str]) -> None:
    """Write the lesson into an empty folder, with the site's own library."""
    for shared in ("site_data", "theme"):
        (root / shared).symlink_to(ROOT / shared)
    lesson = root / "lessons" / "print" / "lesson.yaml"
    lesson.parent.mkdir(parents=True)
    lesson.write_text(_text(moves), encoding="utf-8")


def lessons_of_moves(folders: pytest.TempPathFactory) -> Callable[[int], Path]:
    """`made(n)` gives the built folder of a lesson with the library's first n moves, each built once."""
    return cache(lambda moves: built_lesson(folders.mktemp("moves"), every_move()[:moves]))


def every_move() -> list[str]:
    """Ids of all moves of the library."""
    return list(library().moves)


def _text(moves: list[str]) -> str:
    parts = [moves[start : start + ROWS] for start in range(0, len(moves), ROWS)]
    return (
        "title: Rows for the printer\n"
        "summary: As many rows as moves.\n"
        "grades: 3-5\nminutes: 10\ngoals: [Print.]\n"
        "stops:\n"
        '  - ask: {at: "0:10", prompt: Which?, reveal: We will see.}\n'
        + "".join(_compare_and_move(f"lunch-{n}", part) for n, part in enumerate(parts, 1))
        + "  - talk: {prompt: What now?, ideas: [Half of each]}\n"
    )


def _compare_and_move(name: str, moves: list[str]) -> str:
    return (
        f"  - compare:\n      id: {name}\n      measure: energy\n      sides: {SIDES}\n"
        f"      rows:\n{''.join(f'        - {{id: r{at}, foods: {FOODS}}}{chr(10)}' for at in range(len(moves)))}"
        "      solve: [gap, count, total]\n"
        f"  - move: {{for: {name}, one_move_per: 50, moves: [{', '.join(moves)}]}}\n"
    )
