"""Spaces that look like any other and are none to YAML, as word processors and web pages bring them."""

from __future__ import annotations

import re
from collections.abc import Iterator

import yaml

from generator.problems import Place, Problem
from generator.read.broken import LINE_BREAK

_HARD = "\u00a0\u2000-\u200b\u202f\u205f\u2060\u3000"
_INDENT = re.compile(rf"[ ]*[{_HARD}][ {_HARD}]*(?:-[ {_HARD}]|-$|[\w-]+:(?:[ {_HARD}]|$))")
"""The beginning of a line that was meant to begin an entry or a key."""
_AFTER_SIGN = re.compile(rf"[ ]*(?:- +)*(?:-|[\w-]+:)(?=[{_HARD}])")
"""A hyphen or a key with a colon that no plain space follows."""
_WHAT = "a space stands here that looks like any other and is none to YAML (a no-break space)"
_WAY_OUT = "delete it and type a space; a plain text editor writes no other"


def hard_spaces(path: str, text: str, read: yaml.Node | yaml.MarkedYAMLError) -> list[Problem]:
    """Lines whose indent, or whose space after a hyphen or colon, is another sign than a space.

    Only those that mislead: in quotes and below a ``|`` any space may stand.

    Args:
        path: of the file, for the places.
        text: of the file.
        read: what YAML made of it, or why it stopped.
    """
    lines = LINE_BREAK.split(text) if re.search(f"[{_HARD}]", text) else []
    odd = {number for number, line in enumerate(lines) if _column(line)}
    if odd and isinstance(read, yaml.Node):
        odd &= set(_swallowed(read, lines))
    elif odd and isinstance(read, yaml.MarkedYAMLError):
        mark = read.problem_mark
        odd = {number for number in odd if mark is None or number <= mark.line}
    return [
        Problem(Place(path, one + 1, _column(lines[one])), _WHAT, _WAY_OUT) for one in sorted(odd)
    ]


def _column(line: str) -> int:
    """Where the first such space of a line stands, from 1; 0 where none misleads."""
    if not (_INDENT.match(line) or _AFTER_SIGN.match(line)):
        return 0
    found = re.search(f"[{_HARD}]", line)
    return found.start() + 1 if found else 0


def _swallowed(node: yaml.Node, lines: list[str]) -> Iterator[int]:
    """Lines, from 0, that became part of a text without quotes."""
    waiting = [node]  # and no call inside a call: brackets may stand in a thousand others
    while waiting:
        one = waiting.pop()
        if not isinstance(one, yaml.ScalarNode):
            for child in one.value:
                waiting += child if isinstance(child, tuple) else (child,)
        elif not one.style:
            first, last = one.start_mark.line, one.end_mark.line
            yield first
            yield from (at for at in range(first + 1, last + 1) if _INDENT.match(lines[at]))
