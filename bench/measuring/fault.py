"""One planted fault: a change to a file of ours that would hurt somebody, and the tests that must notice."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from pathlib import Path

LIST = Path(__file__).parents[1] / "faults.toml"


@dataclass(frozen=True, slots=True)
class Fault:
    """A single change of a text in a file."""

    name: str
    """What the program does then, in a few words; no other fault has the same."""
    file: str
    """Of the project, from its root."""
    old: str
    """What stands in the file, once."""
    new: str
    """What is put there instead."""
    hurts: str
    """What it would do to people."""
    tests: tuple[str, ...]
    """Files or tests that must notice, as pytest is told them."""


def read_faults(file: Path = LIST) -> tuple[Fault, ...]:
    """Every fault of the list, in its order."""
    listed = tomllib.loads(file.read_text("utf-8"))["fault"]
    return tuple(Fault(**{**one, "tests": tuple(one["tests"])}) for one in listed)


def why_not(fault: Fault, root: Path) -> str:
    """Why a fault cannot be planted in the project at ``root``; empty where it can be."""
    file = root / fault.file
    if not file.is_file():
        return f"there is no {fault.file} any more"
    there = file.read_text("utf-8").count(fault.old)
    if there != 1:
        return f"its old text stands {there} times in {fault.file}"
    if fault.new == fault.old:
        return "its new text is the old one"
    gone = [test for test in fault.tests if not (root / test.partition("::")[0]).is_file()]
    if gone or not fault.tests:
        return f"its tests are not there: {', '.join(gone) or 'none is named'}"
    return ""
