"""A sentence into cues, and a cue into lines, as long as the site's limits let them be."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from generator.compute.rounding import whole
from generator.model.captions import CaptionLimits


def cues_of(words: Sequence[str], limits: CaptionLimits, most: int) -> Iterator[tuple[str, ...]]:
    """A sentence in as few cues as hold it, of about equal length, after a comma where one is near.

    Args:
        words: of the sentence, at least one.
        limits: letters on a line, and lines of a cue.
        most: words that a cue may stand for.
    """
    fewest = next(
        number for number in range(1, len(words) + 1) if _fits(words, number, limits, most)
    )
    for start, end in _parts(words, fewest):
        yield lines_of(words[start:end], limits)


def lines_of(words: Sequence[str], limits: CaptionLimits) -> tuple[str, ...]:
    """In as few lines as hold the words, none longer than it must be, and the first the shortest.

    Words that do not fit stand in as many lines as there may be, all of them too long.
    """
    for number in range(1, limits.lines + 1):
        lines = _in_lines(words, number)
        if number == limits.lines or max(map(len, lines)) <= limits.line:
            return lines
    raise AssertionError("limits have at least one line")


def _in_lines(words: Sequence[str], number: int) -> tuple[str, ...]:
    """At most so many lines, the longest of them as short as can be."""
    whole = len(" ".join(words))
    width = max(whole // number, 1)
    while len(lines := _filled(words, width)) > number:
        width += 1
    return lines


def _filled(words: Sequence[str], width: int) -> tuple[str, ...]:
    """Lines filled from the last one up, so that the first is the short one."""
    lines: list[str] = []
    for word in reversed(words):
        if lines and len(word) + 1 + len(lines[-1]) <= width:
            lines[-1] = f"{word} {lines[-1]}"
        else:
            lines.append(word)
    return tuple(reversed(lines))


def _fits(words: Sequence[str], number: int, limits: CaptionLimits, most: int) -> bool:
    if len(words) > number * most:
        return False
    parts = [words[start:end] for start, end in _parts(words, number)]
    return all(
        len(part) == 1
        or (len(part) <= most and max(map(len, lines_of(part, limits))) <= limits.line)
        for part in parts
    )


def _parts(words: Sequence[str], number: int) -> Iterator[tuple[int, int]]:
    """Where each of so many parts begins and ends."""
    start = 0
    for left in range(number, 0, -1):
        end = len(words) if left == 1 else _cut(words, start, left)
        yield start, end
        start = end


def _cut(words: Sequence[str], start: int, left: int) -> int:
    """Where the next of so many equal parts ends."""
    even = start + whole(Fraction(len(words) - start, left))
    near = [
        place
        for place in (even, even - 1, even + 1, even - 2, even + 2)
        if start < place <= len(words) - left + 1
    ]
    commas = [place for place in near if words[place - 1].endswith((",", ";"))]
    return (commas or near)[0]
