"""Numbers that are spoken, held against the numbers the lesson computes at that time."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from functools import cache, partial
from types import MappingProxyType

from generator.check.claims.mentions import Seat
from generator.check.rule import rule, rule_of_words
from generator.check.spoken_numbers.judge import Fault, Judge
from generator.check.spoken_numbers.missing import missing
from generator.check.spoken_numbers.near import near
from generator.check.spoken_numbers.passes import figures
from generator.check.spoken_numbers.speech import Speech, captions_speech, script_speech
from generator.check.spoken_numbers.whose import Follower, Seats
from generator.check.spoken_numbers.written import written
from generator.check.spoken_of import spoken_of
from generator.compute.recorded import values_as_filmed
from generator.compute.result import Comparison, LessonResult
from generator.language import Language, language_of
from generator.problems import Problem, Weight


@rule_of_words
def spoken_numbers(result: LessonResult) -> Iterator[Problem]:
    """Wrong, contradicting and missing numbers in the script and the captions of the lesson's language.

    *Wrong*: a food's number is another one, or nothing the lesson computes near by is this number.
    *Contradicting*: a food is given the number of another food. *Missing*: a food is named whose
    number the script says and the captions do not. ``passes.figures`` lists what is let through.
    """
    lesson = result.lesson
    language = language_of(lesson.language)
    script = tuple(script_speech(lesson, language.claims))
    yield from _questions(result, script, script, language)
    if file := lesson.captions.get(lesson.language):
        heard = tuple(captions_speech(lesson, file, language.claims))
        yield from _questions(result, heard, script, language, values_as_filmed(result))


@rule
def untranslated_numbers(result: LessonResult) -> Iterator[Problem]:
    """The same for captions in a language that the lesson has no translation for."""
    lesson = result.lesson
    for tag, file in lesson.captions.items():
        if tag not in {lesson.language, *lesson.translations}:
            language = language_of(tag)
            heard = tuple(captions_speech(lesson, file, language.claims))
            yield from _questions(result, heard, (), language, values_as_filmed(result))


def _questions(
    result: LessonResult,
    heard: tuple[Speech, ...],
    script: tuple[Speech, ...],
    language: Language,
    filmed: Mapping[str, frozenset[Decimal]] = MappingProxyType({}),
) -> Iterator[Problem]:
    """What is wrong with what is heard; ``filmed`` is said by a film rightly, and told elsewhere."""
    scripts = {speech.index: speech for speech in script}
    for speech in heard:
        given: set[Seat] = set()
        for number in _spoken(result, speech, language):
            given |= number.seats
            if number.fault and number.value not in filmed.get(_id(result, speech), ()):
                yield _problem(speech, number.fault)
        if speech.index in scripts:
            for fault in missing(result, speech, scripts[speech.index], given, language):
                yield _problem(speech, fault)


@dataclass(frozen=True, slots=True)
class _Spoken:
    """A number that was judged."""

    value: Decimal
    """As it is said."""
    seats: Seats
    """The foods it is said of, if any."""
    fault: Fault | None
    """What is wrong with it, if anything."""


def _spoken(result: LessonResult, speech: Speech, language: Language) -> Iterator[_Spoken]:
    """The figures of one stop, judged."""
    heard = [
        (said, figures(said.text, language.numbers_in(said.text), language.around))
        for said in speech.said
    ]
    computed = near(result, speech.index) if any(numbers for _, numbers in heard) else ()
    if not computed:
        return
    its_own = language.tag == language_of(result.lesson.language).tag  # else foods have other names
    about = spoken_of(result, speech.index) if its_own else None
    comparison = about if isinstance(about, Comparison) else None
    follower = Follower(comparison, language) if comparison else None
    judge = Judge(
        result, computed, cache(partial(written, result, speech.index)), comparison, language
    )
    for said, numbers in heard:
        owners = follower.whose(said, numbers) if follower else tuple(frozenset() for _ in numbers)
        for number, seats in zip(numbers, owners, strict=True):
            yield _Spoken(number.value, seats, judge.fault(said, number, seats))


def _id(result: LessonResult, speech: Speech) -> str:
    return result.lesson.stop_id(speech.index)


def _problem(speech: Speech, fault: Fault) -> Problem:
    place, time = speech.spot(fault.offset)
    return Problem(place, time + fault.what, fault.hint, Weight.QUESTION)
