"""Reads cases that anybody can write: one a line, under headings, in ``tests/examples/<name>.<language>.txt``.

A line that begins with ``## `` is a heading, any other that begins with ``#`` a remark. Where
something is expected of a case it stands behind ``=>``.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

EXAMPLES = Path(__file__).parent / "examples"


@dataclass(frozen=True, slots=True)
class Case:
    """One line."""

    language: str
    text: str
    expected: str = ""
    """What stands behind ``=>``."""

    def __str__(self) -> str:
        """The case as it is named among the tests."""
        return f"{self.language}: {self.text}"


def languages(name: str) -> tuple[str, ...]:
    """The languages there are cases of a name in."""
    found = tuple(sorted(file.name.split(".")[1] for file in EXAMPLES.glob(f"{name}.*.txt")))
    assert found, f"there is no tests/examples/{name}.<language>.txt"
    return found


def cases(name: str, heading: str) -> list[Case]:
    """The cases under a heading, of every language; each language must have some."""
    return [case for one in languages(name) for case in cases_in(name, heading, one)]


def cases_in(name: str, heading: str, language: str) -> list[Case]:
    """The cases under a heading in one language."""
    lines = (EXAMPLES / f"{name}.{language}.txt").read_text("utf-8").splitlines()
    found, under = [], ""
    for line in map(str.strip, lines):
        if line.startswith("## "):
            under = line.removeprefix("## ")
        elif under == heading and line and not line.startswith("#"):
            text, _, expected = line.partition("=>")
            found.append(Case(language, text.strip(), expected.strip()))
    assert found, f"tests/examples/{name}.{language}.txt has no case under `## {heading}`"
    return found
