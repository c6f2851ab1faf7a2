"""What a field holds, and in which unit, is said below it: in the rooms that hold a lesson's data and numbers."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
ROOMS = ("check", "compute", "language", "model", "read")
FILES = sorted(file for room in ROOMS for file in (ROOT / "generator" / room).rglob("*.py"))


def untold(file: Path) -> Iterator[str]:
    """Fields of classes with nothing below them that says what they hold."""
    for node in ast.walk(ast.parse(file.read_text("utf-8"))):
        if isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
            for one, below in pairwise([*node.body, ast.Pass()]):
                if isinstance(one, ast.AnnAssign) and not isinstance(below, ast.Expr):
                    name = ast.unparse(one.target)
                    if name != "kind" and "description=" not in ast.unparse(one):
                        yield f"{node.name}.{name}"


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.relative_to(ROOT).as_posix())
def test_every_field_is_told(file: Path) -> None:
    assert list(untold(file)) == []


def test_a_field_without_a_word_is_seen(tmp_path: Path) -> None:
    file = tmp_path / "a.py"
    file.write_text(
        'class A:\n    one: int\n    """One."""\n    two: int\n\n    def f(self): ...\n', "utf-8"
    )
    assert list(untold(file)) == ["A.two"]
