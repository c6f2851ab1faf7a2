"""What is spoken at each stop, sentence by sentence: in the captions, and in the script."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field

from generator.check.breath import parts
from generator.check.captions.on_air import cues_on_air
from generator.check.claims.read import rows_called
from generator.language.grammar import Grammar
from generator.model.captions import CaptionFile, Cue, clock_ms
from generator.model.lesson import Lesson
from generator.problems import Place

_SENTENCE = re.compile(r"[^\s.!?](?:[^.!?\n]|[.!?](?=[^\s.!?]))*[.!?]*")
"""Up to a mark that ends it; the point of 4.6 has no space after it."""

Spot = Callable[[int], tuple[Place, str]]
"""The place of a letter of the speech, and its time in the video as ``at 1:05``, if it has one."""


@dataclass(frozen=True, slots=True)
class Said:
    """One sentence, or a part of one that nobody says in a breath."""

    text: str
    """As it is said, with its full stop."""
    start: int
    """Where it begins in the speech of its stop."""
    rows: frozenset[int]
    """Rows that it or a sentence before it calls by number, counted from 0."""


@dataclass(frozen=True, slots=True)
class Speech:
    """All that is said at one stop."""

    index: int
    """Which stop of the lesson, from 0."""
    said: tuple[Said, ...]
    """Its sentences in order."""
    spot: Spot = field(repr=False)
    """Where a letter of it stands."""


def captions_speech(lesson: Lesson, file: CaptionFile, grammar: Grammar) -> Iterator[Speech]:
    """What the captions of a language say; a sentence runs on from cue to cue of one stop."""
    for part in cues_on_air(lesson.file.stops, file.cues):
        text = " ".join(cue.text for cue in part.cues)
        yield Speech(part.index, _said(text, grammar), _cue_spot(part.cues))


def script_speech(lesson: Lesson, grammar: Grammar) -> Iterator[Speech]:
    """What the script says; the place is the line of the lesson file."""
    for index, stop in enumerate(lesson.file.stops):
        if stop.say:
            flowing = re.sub(r"(?<!\n)\n(?!\n)", " ", stop.say)  # a line break ends no sentence
            place = lesson.places.at("stops", index, stop.kind, "say")
            lines = lesson.places.lines if place.path == lesson.places.file else ()
            yield Speech(index, _said(flowing, grammar), _script_spot(place, stop.say, lines))


def _said(text: str, grammar: Grammar) -> tuple[Said, ...]:
    found: list[Said] = []
    rows: frozenset[int] = frozenset()
    for sentence in _SENTENCE.finditer(text):
        for at, part in parts(sentence[0]):
            rows = rows_called(part, grammar) or rows
            found.append(Said(part, sentence.start() + at, rows))
    return tuple(found)


def _cue_spot(cues: tuple[Cue, ...]) -> Spot:
    starts: list[int] = []
    at = 0
    for cue in cues:
        starts.append(at)
        at += len(cue.text) + 1

    def spot(offset: int) -> tuple[Place, str]:
        number = max(0, bisect_right(starts, offset) - 1)
        cue, inside = cues[number], offset - starts[number]
        line = 0
        while line < len(cue.lines) - 1 and inside > len(cue.lines[line]):
            inside -= len(cue.lines[line]) + 1
            line += 1
        place = Place(cue.place.path, cue.place.line + 1 + line, max(0, inside) + 1)
        return place, f"at {clock_ms(cue.start_ms)}, "

    return spot


def _script_spot(place: Place, say: str, lines: tuple[str, ...]) -> Spot:
    def spot(offset: int) -> tuple[Place, str]:
        start = say.rfind("\n", 0, offset) + 1
        written = say[start:].partition("\n")[0]
        for number in range(place.line - 1, len(lines)):
            column = lines[number].find(written)
            if column >= 0:
                return Place(place.path, number + 1, column + offset - start + 1), ""
        return place, ""

    return spot
