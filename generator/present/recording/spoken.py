"""When each sentence of the script is heard: words laid along the timeline of the video.

A blank line in ``say`` turns to the next slide, so no caption runs across it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import ROUND_CEILING
from itertools import groupby

from generator.compute.timeline import Span, spans
from generator.model.lesson import Lesson
from generator.present.recording.line_breaks import cues_of
from generator.present.words.foreign import like


@dataclass(frozen=True, slots=True)
class Cue:
    """A few words of the script, and when they are heard."""

    start: int
    """ms"""
    end: int
    """ms"""
    lines: tuple[str, ...]
    """As many and as long as the site's limits let them be, unless one word is longer."""
    index: int
    """The stop it belongs to, from 0."""
    paragraph: int
    """Which paragraph of the stop's script, from 0."""


def spoken(lesson: Lesson) -> tuple[Cue, ...]:
    """The script as cues, none of them over a pause point."""
    pace, stops = _pace(lesson), lesson.file.stops
    cues: list[Cue] = []
    for stretch in _between_pauses(spans(stops)):
        start, end = stretch[0].start, stretch[-1].end
        parts = [
            (span, paragraph, lines)
            for span in stretch
            for paragraph, lines in _parts(stops[span.index].say or "", lesson, pace)
        ]
        laid = list(_lay(parts, start, pace))
        cues += laid if not laid or laid[-1].end <= end else _squeeze(laid, start, end, pace)
    return tuple(cues)


def paragraphs(say: str) -> tuple[str, ...]:
    """The paragraphs of a script, each on one line."""
    parts = re.split(r"\n\s*\n", say)
    return tuple(like(say, " ".join(part.split())) for part in parts if part.strip())


@dataclass(frozen=True, slots=True)
class _Pace:
    """How long words stand."""

    words: int
    """Words a minute."""
    shortest: int
    """ms a cue stands at least."""
    longest: int
    """ms a cue stands at most."""

    @property
    def words_a_cue(self) -> int:
        return max(1, self.longest * self.words // 60_000)

    def stands(self, lines: Sequence[str]) -> int:
        """ms, never faster than the pace."""
        words = sum(len(line.split()) for line in lines)
        return min(self.longest, max(self.shortest, -(-words * 60_000 // self.words)))


def _pace(lesson: Lesson) -> _Pace:
    limits = lesson.caption_limits
    shortest = int((limits.shortest * 1000).to_integral_value(ROUND_CEILING))
    longest = max(shortest, int(limits.longest * 1000))
    return _Pace(limits.drafted(lesson.file.grades.band), shortest, longest)


def _between_pauses(found: Sequence[Span]) -> Iterator[list[Span]]:
    """Neighbours that the player runs through without a halt; words may spill over among them."""
    before = 0
    numbered = []
    for span in found:
        numbered.append((before, span))
        before += span.pauses
    for _, group in groupby(numbered, key=lambda pair: pair[0]):
        yield [span for _, span in group]


def _lay(
    parts: Sequence[tuple[Span, int, tuple[str, ...]]], start: int, pace: _Pace
) -> Iterator[Cue]:
    clock = start
    for span, paragraph, lines in parts:
        clock = max(clock, span.start)
        end = clock + pace.stands(lines)
        yield Cue(clock, end, lines, span.index, paragraph)
        clock = end


def _squeeze(cues: Sequence[Cue], start: int, end: int, pace: _Pace) -> Iterator[Cue]:
    """More words than there is time: all of them, faster; none where there is no time at all.

    Long cues give way first, so that a short one still stands long enough to be seen.
    """
    if end - start < len(cues):
        return
    least = min(pace.shortest, (end - start) // len(cues))
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


def _parts(say: str, lesson: Lesson, pace: _Pace) -> Iterator[tuple[int, tuple[str, ...]]]:
    for number, paragraph in enumerate(paragraphs(say)):
        for sentence in re.split(r"(?<=[.?!:]) ", paragraph):
            for lines in cues_of(sentence.split(), lesson.caption_limits, pace.words_a_cue):
                yield number, lines
