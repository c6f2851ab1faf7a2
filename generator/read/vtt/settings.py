"""Settings: ``align:start`` behind the times of a cue, ``width:40%`` in a region."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence

from generator.problems import Problem
from generator.read.explain import did_you_mean
from generator.read.vtt.lines import Line

_PERCENT = r"(?:100(?:\.0+)?|[0-9]{1,2}(?:\.[0-9]+)?)%"
_CUE: Mapping[str, tuple[str, str]] = {
    "vertical": (r"rl|lr", "rl or lr"),
    "line": (
        rf"(?:-?[0-9]+|{_PERCENT})(?:,(?:start|center|end))?",
        "a whole number or a percentage, such as line:85%",
    ),
    "position": (
        rf"{_PERCENT}(?:,(?:line-left|center|line-right))?",
        "a percentage, such as position:50%",
    ),
    "size": (_PERCENT, "a percentage, such as size:80%"),
    "align": (r"start|center|end|left|right", "start, center, end, left or right"),
    "region": (r"\S+", "the name of a region"),
}
_REGION: Mapping[str, tuple[str, str]] = {
    "id": (r"\S+", "a name"),
    "width": (_PERCENT, "a percentage"),
    "lines": (r"[0-9]+", "a whole number"),
    "regionanchor": (rf"{_PERCENT},{_PERCENT}", "two percentages"),
    "viewportanchor": (rf"{_PERCENT},{_PERCENT}", "two percentages"),
    "scroll": (r"up", "up"),
}


def setting_problems(line: Line, start: int) -> Iterator[Problem]:
    """What is wrong with the settings of a cue, which begin at a column counted from 0."""
    yield from _problems(line, start, _CUE, set())


def region_problems(lines: Sequence[Line]) -> Iterator[Problem]:
    """What is wrong in a region's lines."""
    seen: set[str] = set()
    for line in lines:
        yield from _problems(line, 0, _REGION, seen)


def _problems(
    line: Line, start: int, known: Mapping[str, tuple[str, str]], seen: set[str]
) -> Iterator[Problem]:
    for found in re.finditer(r"[^ \t]+", line.text[start:]):
        at = start + found.start()
        name, colon, value = found[0].partition(":")
        if name not in known:
            hint = did_you_mean(name, list(known)) if colon else "words begin on the next line"
            yield line.problem(at, f"`{found[0][:40]}` is not a setting", hint)
            continue
        if name in seen:
            yield line.problem(at, f"`{name}` is set twice", "keep one of them")
        seen.add(name)
        form, wanted = known[name]
        if not re.fullmatch(form, value):
            yield line.problem(at, f"`{found[0][:40]}` cannot be set", f"give {wanted}")
