"""Problems for other programs: as JSON, and as the lines that forges show beside the code."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterable
from os.path import relpath
from pathlib import Path

from generator.problems import Problem, Weight, shortened

_COMMANDS = {Weight.MUST: "error", Weight.QUESTION: "warning", Weight.DRAFT: "notice"}
"""Workflow commands of GitHub Actions ("Workflow commands", from memory, status M)."""
_SEVERITIES = {Weight.MUST: "major", Weight.QUESTION: "minor", Weight.DRAFT: "info"}
"""Severities of GitLab's code quality report, after the Code Climate specification (from memory, status M)."""


def as_json(problems: Iterable[Problem]) -> str:
    """A list of objects, one for each problem, in their order."""
    told = [
        {
            "file": problem.place.path,
            "line": problem.place.line,
            "column": problem.place.column,
            "what": problem.what,
            "hint": problem.hint,
            "weight": problem.weight.value,
        }
        for problem in shortened(problems)
    ]
    return json.dumps(told, ensure_ascii=True, indent=2)


def workflow_commands(problems: Iterable[Problem], root: Path) -> list[str]:
    """For each problem one line by which GitHub shows it beside the line of the file.

    Args:
        problems: what to show.
        root: folder of the site; files are named from where the command was typed.
    """
    return [
        f"::{_COMMANDS[one.weight]} file={_property(_path(one, root))},line={one.place.line},"
        f"col={one.place.column}::{_data(_sentence(one))}"
        for one in shortened(problems)
    ]


def code_quality(problems: Iterable[Problem], root: Path) -> str:
    """GitLab's code quality report, a list of findings; arguments as of ``workflow_commands``."""
    told = [
        {
            "description": _sentence(one),
            "check_name": f"plumline {one.weight.value}",
            "fingerprint": _fingerprint(one),
            "severity": _SEVERITIES[one.weight],
            "location": {"path": _path(one, root), "lines": {"begin": one.place.line}},
        }
        for one in shortened(problems)
    ]
    return json.dumps(told, ensure_ascii=True, indent=2)


def _sentence(problem: Problem) -> str:
    return f"{problem.what}: {problem.hint}" if problem.hint else problem.what


def _path(problem: Problem, root: Path) -> str:
    return relpath(root / problem.place.path).replace("\\", "/")


def _fingerprint(problem: Problem) -> str:
    """The same for the same problem of the same file, wherever its line has moved to."""
    told = f"{problem.place.path}\0{problem.what}"
    return hashlib.sha256(told.encode("utf-8", "surrogateescape")).hexdigest()


def _escaped(signs: str) -> Callable[[str], str]:
    """Writes signs as a percent sign and their number, in two digits to the base of sixteen."""
    table = str.maketrans({sign: f"%{ord(sign):02X}" for sign in signs})
    return lambda text: text.translate(table)


_data = _escaped("%\r\n")
_property = _escaped("%\r\n:,")
