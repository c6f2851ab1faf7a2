"""Every text of a lesson in one language, as the checks of numbers, claims and kind words take it.

This is the one walk: pages, script and captions. A text that no check should ask has no place in it;
each check says itself what it leaves out (``HeldText.tells``).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from enum import Enum
from fractions import Fraction
from functools import lru_cache

from generator.check.breath import parts
from generator.check.captions.on_air import cues_on_air
from generator.check.rows import rows_called
from generator.check.spots import Spot, spot_in_cues, spot_in_file
from generator.compute.result import LessonResult
from generator.language import Language, language_of
from generator.language.grammar import Grammar
from generator.model.captions import CaptionFile, Cue
from generator.model.filling import Brace, Filled, Filling
from generator.model.lesson import Lesson
from generator.model.places import Places
from generator.model.text_marks import For
from generator.model.texts import LessonText, lesson_texts

_SENTENCE = re.compile(r"[^\s.!?](?:[^.!?\n]|[.!?](?=[^\s.!?]))*[.!?]*")
"""Up to a mark that ends it; the point of 4.6 has no space after it."""
_FLOWING = re.compile(r"(?<!\n)\n(?!\n|[-*•]\s|\d+[.)]\s)")
"""A line break that ends no sentence: neither an empty line nor an entry of a list follows."""


class Medium(Enum):
    """Where a text is met."""

    PAGE = "page"
    SCRIPT = "script"
    CAPTIONS = "captions"


@dataclass(frozen=True, slots=True)
class Said:
    """One sentence, or a part of one that nobody says in a breath."""

    text: str
    """As it is said, with its full stop."""
    start: int
    """Where it begins in its text."""
    rows: frozenset[int]
    """Rows that it or a sentence before it calls by number, counted from 0."""


@dataclass(frozen=True, slots=True)
class HeldText:
    """One text, held against the numbers of its lesson."""

    text: str
    """In lines as paragraphs: what was broken only for width is one line."""
    language: Language
    """Of the text."""
    medium: Medium
    """Where it is met."""
    stop: int | None
    """Which stop of the lesson it belongs to, from 0; nothing for the whole lesson."""
    spot: Spot = field(repr=False)
    """Where a letter of it stands."""
    tells: bool = True
    """Whether it tells something of the lesson's numbers; names and sources of foods do not."""
    braces: tuple[Filled, ...] = ()
    """What stood in braces, or is meant by a note of the captions."""

    @property
    def said(self) -> tuple[Said, ...]:
        """Its sentences in order."""
        return _said(self.text, self.language.tag, goes_on=self.medium is not Medium.PAGE)

    def marked(self, start: int, end: int, *braces: Brace) -> bool:
        """Whether a part of it, by its letters, was filled in or marked as meant."""
        return any(
            one.brace in braces and start < one.shown[1] and one.shown[0] < end
            for one in self.braces
        )


@lru_cache(maxsize=8)
def held_texts(result: LessonResult) -> tuple[HeldText, ...]:
    """Every text of the lesson in its language: of the lesson file, then of the captions."""
    lesson = result.lesson
    language = language_of(lesson.language)
    found = [typed(lesson, one, language) for one in lesson_texts(lesson.file) if one.text.strip()]
    if file := lesson.captions.get(lesson.language):
        found += _captions(lesson, file, language)
    return tuple(found)


def lone_captions(result: LessonResult) -> tuple[HeldText, ...]:
    """Captions in languages that the lesson has no translation for."""
    lesson = result.lesson
    return tuple(
        text
        for tag, file in lesson.captions.items()
        if tag not in {lesson.language, *lesson.translations}
        for text in _captions(lesson, file, language_of(tag))
    )


def amounts_named(
    texts: Iterable[HeldText], stop: int | None, grammar: Grammar
) -> frozenset[Fraction]:
    """The amounts that the texts of a stop name; a multiple may repeat one.

    *A pot holds four cups … take it four times* multiplies one food, and counts no moves.
    """
    beside = (one.text for one in texts if one.stop == stop and one.tells)
    found = (match["n"] for text in beside for match in grammar.amounts.finditer(text))
    return frozenset(number for name in found if (number := grammar.number(name)) is not None)


def typed(lesson: Lesson, one: LessonText, language: Language) -> HeldText:
    """A text of the lesson file or of a translation."""
    mark = one.mark
    filling = lesson.fillings.get(one.path, Filling(one.text, ()))
    spot = spot_in_file(_places(lesson, one), one.path, filling.written)
    return HeldText(
        _FLOWING.sub(" ", one.text),
        language,
        Medium.SCRIPT if mark.whom is For.LEARNER_HEARS else Medium.PAGE,
        one.stop,
        lambda offset: spot(filling.at(offset)),
        mark.tells,
        filling.places,
    )


def _places(lesson: Lesson, one: LessonText) -> Places:
    """Of the file that holds a text: of the lesson, or of its translation."""
    place = lesson.places.at(*one.path)
    translation = lesson.translations.get(lesson.language)
    if translation is None or place.path != translation.places.file:
        return lesson.places
    own = translation.places
    return Places(own.file, {one.path: place}, {}, own.lines)


def _captions(lesson: Lesson, file: CaptionFile, language: Language) -> Iterator[HeldText]:
    """What the captions say at each stop; a sentence runs on from cue to cue of one stop."""
    on_air = cues_on_air(lesson.file.stops, file.cues)
    timed: list[tuple[int | None, tuple[Cue, ...]]] = [(one.index, one.cues) for one in on_air]
    for index, cues in timed or [(None, file.cues)]:
        text = " ".join(cue.text for cue in cues)
        meant = tuple(_meant(cues, language))
        spot = spot_in_cues(cues)
        yield HeldText(text, language, Medium.CAPTIONS, index, spot, braces=meant)


def _meant(cues: Sequence[Cue], language: Language) -> Iterator[Filled]:
    """The numbers of cues that a note names, as they stand in the words of all cues together."""
    at = 0
    for cue in cues:
        named = {number.value for number in language.numbers_in(cue.meant)}
        for number in language.numbers_in(cue.text) if named else ():
            if number.value in named:
                span = (at + number.start, at + number.end)
                yield Filled(Brace.MEANT, number.text, span, span)
        at += len(cue.text) + 1


@lru_cache(maxsize=1024)
def _said(text: str, tag: str, *, goes_on: bool) -> tuple[Said, ...]:
    """The sentences of a text; on a page a row that was called by number ends with its paragraph."""
    grammar = language_of(tag).claims
    found: list[Said] = []
    rows: frozenset[int] = frozenset()
    last = 0
    for sentence in _SENTENCE.finditer(text):
        if not goes_on and "\n" in text[last : sentence.start()]:
            rows = frozenset()
        last = sentence.end()
        for at, part in parts(sentence[0]):
            rows = rows_called(part, grammar) or rows
            found.append(Said(part, sentence.start() + at, rows))
    return tuple(found)
