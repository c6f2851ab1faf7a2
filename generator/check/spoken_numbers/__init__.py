"""Numbers that are written or spoken, held against the numbers the lesson computes at that time."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal

from generator.check.claims.mentions import Seat
from generator.check.held_texts import HeldText, Medium, Said, held_texts, lone_captions
from generator.check.rule import rule, rule_of_words
from generator.check.spoken_numbers.brought import brought
from generator.check.spoken_numbers.judge import Fault, Judge
from generator.check.spoken_numbers.let_through import Passing
from generator.check.spoken_numbers.meant import Meant, beside, rows_come_after
from generator.check.spoken_numbers.missing import missing
from generator.check.spoken_numbers.near import near
from generator.check.spoken_numbers.passes import figures
from generator.check.spoken_numbers.whose import Follower, Seats
from generator.check.spoken_of import spoken_of
from generator.compute.recorded import values_as_filmed
from generator.compute.result import Comparison, LessonResult
from generator.language import language_of
from generator.language.number import Number
from generator.model.filling import Brace
from generator.problems import Problem, Weight


@rule_of_words
def spoken_numbers(result: LessonResult) -> Iterator[Problem]:
    """Wrong, contradicting and missing numbers in the texts of the lesson's language.

    *Wrong*: a food's number is another one, or nothing the lesson computes near by is this number.
    *Contradicting*: a food is given the number of another food. *Missing*: a food is named whose
    number the script says and the captions do not. ``passes.figures`` lists what is let through.
    """
    texts = tuple(one for one in held_texts(result) if one.tells)
    scripts = {one.stop: one for one in texts if one.medium is Medium.SCRIPT}
    yield from numbers_in(result, texts, scripts)


@rule
def untranslated_numbers(result: LessonResult) -> Iterator[Problem]:
    """The same for captions in a language that the lesson has no translation for."""
    yield from numbers_in(result, lone_captions(result), {})


def numbers_in(
    result: LessonResult, texts: tuple[HeldText, ...], scripts: Mapping[int | None, HeldText]
) -> Iterator[Problem]:
    """What is wrong with some texts; what a film says as it was filmed is told elsewhere."""
    filmed = values_as_filmed(result)
    for text in texts:
        given_to: set[Seat] = set()
        recorded = filmed.get(_id(result, text), ()) if text.medium is Medium.CAPTIONS else ()
        for number in _spoken(result, text, texts):
            given_to |= number.seats
            if number.fault and number.value not in recorded:
                yield _problem(text, number.fault)
        if (script := scripts.get(text.stop)) and text.medium is not Medium.PAGE:
            for fault in missing(result, text, script, given_to, text.language):
                yield _problem(text, fault)


@dataclass(frozen=True, slots=True)
class _Spoken:
    """A number that was judged."""

    value: Decimal
    """As it is said."""
    seats: Seats
    """The foods it is said of, if any."""
    fault: Fault | None
    """What is wrong with it, if anything."""


def _spoken(result: LessonResult, text: HeldText, texts: tuple[HeldText, ...]) -> Iterator[_Spoken]:
    """The figures of one text, judged."""
    language = text.language
    heard = [
        (said, figures(said.text, language.numbers_in(said.text), language)) for said in text.said
    ]
    if not any(numbers for _, numbers in heard):
        return
    last = len(result.lesson.ids) - 1 if text.stop is None else text.stop
    computed = near(result, last)
    if not computed:
        return
    comparison = _comparison(result, text)
    changed = tuple(brought(result, last, comparison, language)) if _own(result, text) else ()
    follower = Follower(comparison, language) if comparison else None
    meant = Meant(computed, comparison, language)
    passing = Passing(result, texts, text, last)
    judge = Judge(result, computed, meant, passing, comparison, changed, language)
    for said, numbers in heard:
        owners = follower.whose(said, numbers) if follower else tuple(frozenset() for _ in numbers)
        ahead = bool(numbers) and rows_come_after(said, numbers, language)
        for at, (number, seats) in enumerate(zip(numbers, owners, strict=True)):
            fault = None
            if not _marked(text, said, number):
                fault = judge.fault(said, number, seats, beside(said, numbers, at), ahead=ahead)
            yield _Spoken(number.value, seats, fault)


def _marked(text: HeldText, said: Said, number: Number) -> bool:
    """Whether a number was filled in, or is meant to be none of the lesson's."""
    start, end = said.start + number.start, said.start + number.end
    return text.marked(start, end, Brace.FIGURE, Brace.MEANT)


def _own(result: LessonResult, text: HeldText) -> bool:
    """Whether a text is in the lesson's own language."""
    return text.language.tag == language_of(result.lesson.language).tag


def _comparison(result: LessonResult, text: HeldText) -> Comparison | None:
    """The comparison that a text tells of; of a whole lesson the only one that it has."""
    if not _own(result, text):
        return None  # its foods have other names
    if text.stop is None:
        every = tuple(result.comparisons.values())
        return every[0] if len(every) == 1 else None
    about = spoken_of(result, text.stop)
    return about if isinstance(about, Comparison) else None


def _id(result: LessonResult, text: HeldText) -> str:
    return "" if text.stop is None else result.lesson.stop_id(text.stop)


def _problem(text: HeldText, fault: Fault) -> Problem:
    place, time = text.spot(fault.offset)
    return Problem(place, time + fault.what, fault.hint, Weight.QUESTION)
