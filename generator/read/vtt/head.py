"""The first lines of a caption file: ``WEBVTT``, and a blank line below it."""

from __future__ import annotations

import re
from collections.abc import Iterator

from generator.problems import Problem
from generator.read.vtt.lines import Line

_SRT = re.compile(r"\d+\s*|\d+:\d\d:\d\d,\d{3} *-->.*")
"""How an SRT file begins: a number, or a time with a comma."""


def head_problems(lines: tuple[Line, ...]) -> Iterator[Problem]:
    """What is wrong above the first block."""
    first = lines[0]
    if not any(line.text.strip() for line in lines):
        yield first.problem(0, "the file is empty", "begin it with WEBVTT and a blank line")
        return
    if not re.fullmatch(r"WEBVTT(?:[ \t].*)?", first.text):
        yield _signature(lines)
    elif "-->" in first.text:
        yield first.problem(
            first.text.index("-->"), "`-->` stands in the first line", "take it away"
        )
    if len(lines) > 1 and first.text.startswith("WEBVTT") and lines[1].text:
        what = "there is no blank line below WEBVTT"
        yield lines[1].problem(0, what, "put a blank line before this one")


def _signature(lines: tuple[Line, ...]) -> Problem:
    first = lines[0]
    begin = next(line for line in lines if line.text.strip())
    word = begin.text.strip()
    if word.upper().startswith("WEBVTT") and begin is not first:
        return begin.problem(0, "WEBVTT is not the first line", "delete the lines above it")
    if word.startswith("WEBVTT") and first.text.startswith("WEBVTT"):
        hint = "write WEBVTT alone on this line, or put a space after it"
        return first.problem(6, f"the first line is `{word[:40]}`", hint)
    if word.upper().startswith("WEBVTT"):
        return first.problem(
            0,
            f"the first line is `{word[:40]}`",
            "write WEBVTT in capitals, with nothing before it",
        )
    if _SRT.fullmatch(word):
        what = "the file begins like an SRT file, and no browser reads that"
        return first.problem(
            0, what, "write WEBVTT and a blank line above it, and a point for each comma in a time"
        )
    return first.problem(
        0, "the first line is not WEBVTT", "write WEBVTT and a blank line above it"
    )
