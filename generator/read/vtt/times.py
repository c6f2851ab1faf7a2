"""The line of a cue that holds its times, read strictly; a wrong one is explained and still understood."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from generator.problems import Problem
from generator.read.vtt.blocks import ARROW
from generator.read.vtt.lines import Line
from generator.read.vtt.settings import setting_problems

_TIME = re.compile(r"(?:([0-9]{2,}):)?([0-5][0-9]):([0-5][0-9])\.([0-9]{3})")
_LOOSE = re.compile(r"[0-9]+(?:\s?[:.,;]\s?[0-9]+)*")
_MOST_HOURS = 1_000


@dataclass(slots=True)
class Times:
    """What a line of times says, as far as it can be understood."""

    start_ms: int | None = None
    """From the beginning of the video; nothing where it cannot be read."""
    end_ms: int | None = None
    """The same."""
    problems: list[Problem] = field(default_factory=list)
    """What is wrong with it."""


def read_times(line: Line) -> Times:
    """Both times and the settings behind them."""
    times = Times()
    arrow = ARROW.search(line.text) or re.search(r"\s*-->\s*", line.text)
    if arrow is None:
        return times
    times.problems += _arrow_problems(line, arrow)
    left = len(line.text) - len(line.text.lstrip(" \t"))
    if left:
        what = "a space stands before the time"
        times.problems.append(line.problem(0, what, "begin the line with the time"))
    end = re.match(r"\S*", line.text[arrow.end() :])
    after = arrow.end() + (end.end() if end else 0)
    times.start_ms = _time(line, left, arrow.start(), times.problems)
    times.end_ms = _time(line, arrow.end(), after, times.problems)
    if times.start_ms is not None and times.end_ms is not None and times.end_ms <= times.start_ms:
        what = (
            "the cue ends when it begins"
            if times.end_ms == times.start_ms
            else "the cue ends before it begins"
        )
        times.problems.append(line.problem(arrow.end(), what, "give a later time after the arrow"))
    times.problems += setting_problems(line, after)
    return times


def _arrow_problems(line: Line, arrow: re.Match[str]) -> Iterator[Problem]:
    at = arrow.start() + len(arrow[0]) - len(arrow[0].lstrip())
    if arrow[0].strip() != "-->":
        yield line.problem(at, f"`{arrow[0].strip()}` is not the arrow of a cue", "write -->")
    elif not re.fullmatch(r"[ \t]+-->[ \t]+", arrow[0]):
        yield line.problem(
            at, "the arrow has no space beside it", "put a space on both sides of -->"
        )


def milliseconds(text: str) -> int | None:
    """A time written right; nothing where it is not, or lies beyond any film."""
    found = _TIME.fullmatch(text)
    if not found:
        return None
    hours, minutes, seconds, rest = (int(part or 0) for part in found.groups())
    return ((hours * 60 + minutes) * 60 + seconds) * 1000 + rest if hours < _MOST_HOURS else None


def _time(line: Line, start: int, end: int, problems: list[Problem]) -> int | None:
    """Milliseconds of the time between two columns."""
    text = line.text[start:end]
    if (right := milliseconds(text)) is not None:
        return right
    loose = _LOOSE.fullmatch(text.strip())
    value = _understood(loose[0]) if loose else None
    hint = f"write {_written(value)}" if value is not None else "write it as 00:01.500"
    problems.append(line.problem(start, _fault(text, value), hint))
    return value


def _fault(text: str, value: int | None) -> str:
    """What keeps a time from being one."""
    if not text.strip():
        return "a time is missing"
    if value is None:
        return f"`{text[:40]}` is not a time"
    if "," in text:
        return f"the time {text} has a comma where a point must be"
    if "." not in text:
        return f"the time {text} has no thousandths of a second"
    parts = re.split("[:;]", text)
    if len(re.split(r"\.", text)[-1]) != 3:
        return f"the time {text} needs three digits after the point"
    if len(parts) < 2:
        return f"the time {text} has no minutes"
    return f"the time {text} needs two digits for each of its hours, minutes and seconds, up to 59"


def _understood(text: str) -> int | None:
    """What a time not written right must mean, in ms; nothing where that is anybody's guess."""
    parts = re.split(r"\s?[:;]\s?", text)
    last = re.fullmatch(r"(\d{1,2})(?:\s?[.,]\s?(\d{1,3}))?", parts[-1])
    if not last or len(parts) > 3 or any(len(p) > 2 or not p.isdecimal() for p in parts[:-1]):
        return None
    whole = [*map(int, parts[:-1]), int(last[1])]
    if any(part > 59 for part in whole):
        return None
    seconds = 0
    for part in whole:
        seconds = seconds * 60 + part
    return seconds * 1000 + int((last[2] or "0").ljust(3, "0"))


def _written(milliseconds: int) -> str:
    minutes, rest = divmod(milliseconds, 60_000)
    hours, minutes = divmod(minutes, 60)
    head = f"{hours:02}:" if hours else ""
    return f"{head}{minutes:02}:{rest // 1000:02}.{rest % 1000:03}"
