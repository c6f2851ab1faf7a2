"""Numbers that are spoken, held against the numbers the lesson computes at that time."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from functools import partial
from types import MappingProxyType

from generator.check.claims.english import ENGLISH as ENGLISH_GRAMMAR
from generator.check.claims.grammar import Grammar
from generator.check.claims.mentions import Seat
from generator.check.claims.spanish import SPANISH as SPANISH_GRAMMAR
from generator.check.spoken_numbers.computed import comparison_of, near, written
from generator.check.spoken_numbers.english import ENGLISH
from generator.check.spoken_numbers.find import numbers_in
from generator.check.spoken_numbers.judge import Fault, Judge
from generator.check.spoken_numbers.missing import missing
from generator.check.spoken_numbers.passes import figures
from generator.check.spoken_numbers.spanish import SPANISH
from generator.check.spoken_numbers.speech import Speech, captions_speech, script_speech
from generator.check.spoken_numbers.tongue import Tongue
from generator.check.spoken_numbers.whose import Follower, Seats
from generator.compute.recorded import values_as_filmed
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight

_TONGUES: Mapping[str, tuple[Grammar, Tongue]] = {
    "en": (ENGLISH_GRAMMAR, ENGLISH),
    "es": (SPANISH_GRAMMAR, SPANISH),
}


def spoken_numbers(result: LessonResult) -> Iterator[Problem]:
    """Wrong, contradicting and missing numbers in the script and the captions of the lesson's language.

    *Wrong*: a food's number is another one, or nothing the lesson computes near by is this number.
    *Contradicting*: a food is given the number of another food. *Missing*: a food is named whose
    number the script says and the captions do not. ``passes.figures`` lists what is let through.
    """
    lesson = result.lesson
    if lesson.language.partition("-")[0] not in _TONGUES:
        return
    grammar, _ = _TONGUES[lesson.language.partition("-")[0]]
    script = tuple(script_speech(lesson, grammar))
    yield from _questions(result, script, script, lesson.language)
    if file := lesson.captions.get(lesson.language):
        heard = tuple(captions_speech(lesson, file, grammar))
        yield from _questions(result, heard, script, lesson.language, values_as_filmed(result))


def untranslated_numbers(result: LessonResult) -> Iterator[Problem]:
    """The same for captions in a language that the lesson has no translation for."""
    lesson = result.lesson
    for language, file in lesson.captions.items():
        tag = language.partition("-")[0]
        if tag in _TONGUES and language not in {lesson.language, *lesson.translations}:
            heard = tuple(captions_speech(lesson, file, _TONGUES[tag][0]))
            yield from _questions(result, heard, (), language, values_as_filmed(result))


def _questions(
    result: LessonResult,
    heard: tuple[Speech, ...],
    script: tuple[Speech, ...],
    language: str,
    filmed: Mapping[str, frozenset[Decimal]] = MappingProxyType({}),
) -> Iterator[Problem]:
    """What is wrong with what is heard; ``filmed`` is said by a film rightly, and told elsewhere."""
    scripts = {speech.index: speech for speech in script}
    tongues = _TONGUES[language.partition("-")[0]]
    for speech in heard:
        given: set[Seat] = set()
        for number in _spoken(result, speech, language):
            given |= number.seats
            if number.fault and number.value not in filmed.get(_id(result, speech), ()):
                yield _problem(speech, number.fault)
        if speech.index in scripts:
            for fault in missing(result, speech, scripts[speech.index], given, tongues):
                yield _problem(speech, fault)


@dataclass(frozen=True, slots=True)
class _Spoken:
    """A number that was judged."""

    value: Decimal
    seats: Seats
    """The foods it is said of, if any."""
    fault: Fault | None


def _spoken(result: LessonResult, speech: Speech, language: str) -> Iterator[_Spoken]:
    """The figures of one stop, judged."""
    grammar, tongue = _TONGUES[language.partition("-")[0]]
    heard = [
        (said, figures(said.text, numbers_in(said.text, language), tongue)) for said in speech.said
    ]
    computed = near(result, speech.index) if any(numbers for _, numbers in heard) else ()
    if not computed:
        return
    own = language == result.lesson.language  # else the foods may have other names than she says
    comparison = comparison_of(result, speech.index) if own else None
    follower = Follower(comparison, grammar, tongue) if comparison else None
    judge = Judge(computed, partial(written, result, speech.index), comparison, grammar, tongue)
    for said, numbers in heard:
        owners = follower.whose(said, numbers) if follower else tuple(frozenset() for _ in numbers)
        for number, seats in zip(numbers, owners, strict=True):
            yield _Spoken(number.value, seats, judge.fault(said, number, seats))


def _id(result: LessonResult, speech: Speech) -> str:
    return result.lesson.stop_id(speech.index)


def _problem(speech: Speech, fault: Fault) -> Problem:
    place, time = speech.spot(fault.offset)
    return Problem(place, time + fault.what, fault.hint, Weight.QUESTION)
