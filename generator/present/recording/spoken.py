"""When each sentence of the script is heard: words laid along the time of the video.

What is said at a stop leads up to its pause point. A watch stop is spoken from its own
beginning; any other stop from where the one before it ended. A blank line in ``say`` turns
to the next slide, so no caption runs across it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from itertools import groupby

from generator.compute.rounding import whole
from generator.model.stops import Stop
from generator.model.stops.watch import WatchStop

HOLD = 1_000
"""ms for which nothing new begins after a pause point, so that a late halt shows and says nothing of what follows."""
WORDS_A_MINUTE = 120
"""Pace of the draft: the lower end of 120 to 130 for lower grades in the older DCMP Captioning Key (read, status R)."""
SHORTEST, LONGEST = 1_300, 6_000
"""ms a caption stands: DCMP, 40 frames to 6 s (from memory, status M)."""
LINE = 32
"""Letters on one line: the older DCMP Captioning Key (read, status R)."""
_WORDS_A_CUE = LONGEST * WORDS_A_MINUTE // 60_000


@dataclass(frozen=True, slots=True)
class Span:
    """The part of the video that leads through one stop."""

    index: int
    """Which stop of the lesson, from 0."""
    start: int
    """ms"""
    end: int
    """ms; the pause point, where the stop has one."""
    pauses: bool
    """Whether the player halts at the end."""


@dataclass(frozen=True, slots=True)
class Cue:
    """A few words of the script, and when they are heard."""

    start: int
    """ms"""
    end: int
    """ms"""
    lines: tuple[str, ...]
    """One or two lines of at most 32 letters, unless one word is longer."""
    index: int
    """The stop it belongs to, from 0."""
    paragraph: int
    """Which paragraph of the stop's script, from 0."""


def spans(stops: Sequence[Stop]) -> tuple[Span, ...]:
    """The stops that have a time, along the video."""
    found: list[Span] = []
    free = 0
    for index, stop in enumerate(stops):
        if isinstance(stop, WatchStop):
            found.append(
                Span(index, max(free, _ms(stop.start)), max(free, _ms(stop.end)), pauses=False)
            )
            free = found[-1].end
        elif stop.at is not None:
            end = _ms(stop.at)
            found.append(Span(index, min(free, end), end, pauses=True))
            free = end + HOLD
    return tuple(found)


def spoken(stops: Sequence[Stop]) -> tuple[Cue, ...]:
    """The script as cues, none of them over a pause point."""
    cues: list[Cue] = []
    for stretch in _between_pauses(spans(stops)):
        end = stretch[-1].end
        parts = [
            (span, paragraph, lines)
            for span in stretch
            for paragraph, lines in _parts(stops[span.index].say or "")
        ]
        laid = list(_lay(parts, stretch[0].start))
        cues += laid if not laid or laid[-1].end <= end else _squeeze(laid, stretch[0].start, end)
    return tuple(cues)


def paragraphs(say: str) -> tuple[str, ...]:
    """The paragraphs of a script, each on one line."""
    return tuple(" ".join(part.split()) for part in re.split(r"\n\s*\n", say) if part.strip())


def _between_pauses(found: Sequence[Span]) -> Iterator[list[Span]]:
    """Neighbours that the player runs through without a halt; words may spill over among them."""
    before = 0
    numbered = []
    for span in found:
        numbered.append((before, span))
        before += span.pauses
    for _, group in groupby(numbered, key=lambda pair: pair[0]):
        yield [span for _, span in group]


def _lay(parts: Sequence[tuple[Span, int, tuple[str, ...]]], start: int) -> Iterator[Cue]:
    clock = start
    for span, paragraph, lines in parts:
        clock = max(clock, span.start)
        end = clock + min(LONGEST, max(SHORTEST, _words(lines) * 60_000 // WORDS_A_MINUTE))
        yield Cue(clock, end, lines, span.index, paragraph)
        clock = end


def _squeeze(cues: Sequence[Cue], start: int, end: int) -> Iterator[Cue]:
    """More words than there is time: all of them, faster; none where there is no time at all.

    Long cues give way first, so that a short one still stands long enough to be seen.
    """
    if end - start < len(cues):
        return
    least = min(SHORTEST, (end - start) // len(cues))
    room = end - start - least * len(cues)
    total = sum(cue.end - cue.start - least for cue in cues) or 1
    spent = 0
    for number, cue in enumerate(cues):
        began, spent = spent, spent + cue.end - cue.start - least
        yield Cue(
            start + number * least + began * room // total,
            start + (number + 1) * least + spent * room // total,
            cue.lines,
            cue.index,
            cue.paragraph,
        )


def _parts(say: str) -> Iterator[tuple[int, tuple[str, ...]]]:
    for number, paragraph in enumerate(paragraphs(say)):
        for sentence in re.split(r"(?<=[.?!:]) ", paragraph):
            for lines in _break(sentence.split()):
                yield number, lines


def _break(words: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """A sentence in as few cues as hold it, of about equal length, after a comma where one is near."""
    fewest = next(
        number
        for number in range(1, len(words) + 1)
        if len(words) <= number * _WORDS_A_CUE and _fits(words, number)
    )
    start = 0
    for left in range(fewest, 0, -1):
        end = len(words) if left == 1 else _cut(words, start, left)
        yield _two_lines(words[start:end])
        start = end


def _fits(words: Sequence[str], number: int) -> bool:
    start = 0
    for left in range(number, 0, -1):
        end = len(words) if left == 1 else _cut(words, start, left)
        lines = _two_lines(words[start:end])
        if end - start > 1 and (
            len(lines) > 2 or end - start > _WORDS_A_CUE or max(map(len, lines)) > LINE
        ):
            return False
        start = end
    return True


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


def _two_lines(words: Sequence[str]) -> tuple[str, ...]:
    """One line where it holds all; else two, the first no longer than it must be."""
    whole = " ".join(words)
    if len(whole) <= LINE or len(words) == 1:
        return (whole,)
    cuts = [(" ".join(words[:cut]), " ".join(words[cut:])) for cut in range(1, len(words))]
    return min(cuts, key=lambda pair: (max(map(len, pair)), len(pair[0])))


def _words(lines: Sequence[str]) -> int:
    return sum(len(line.split()) for line in lines)


def _ms(seconds: Decimal) -> int:
    return int(seconds * 1000)
