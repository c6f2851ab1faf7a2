"""Foods that are named while their numbers are never said."""

from __future__ import annotations

from collections.abc import Iterator
from collections.abc import Set as AbstractSet
from decimal import Decimal

from generator.check.claims.mentions import Seat, held_at
from generator.check.held_texts import HeldText
from generator.check.spoken_numbers.judge import Fault
from generator.check.spoken_numbers.whose import Follower
from generator.compute.result import Comparison, LessonResult
from generator.language import Language


def missing(
    result: LessonResult,
    heard: HeldText,
    script: HeldText,
    given: AbstractSet[Seat],
    language: Language,
) -> Iterator[Fault]:
    """Foods of a compare stop that are named, and whose number is not said there.

    Captions are held against the script: what it gives no number to needs none. The script itself
    is questioned only where it gives a number to more than half of its foods; else the learner is
    meant to look the numbers up.

    Args:
        result: the lesson with its numbers.
        heard: what is said at the stop, in captions or in the script itself.
        script: what the script says there.
        given: foods that were given a number, right or wrong.
        language: of what is heard and of the script.
    """
    stop = "" if heard.stop is None else result.lesson.stop_id(heard.stop)
    comparison = result.comparisons.get(stop)
    if comparison is None or not language.number_words.begin:
        return  # a number in words may well have been said
    scripted = _numbers(script, language)
    seats = [(row, side) for row in range(len(comparison.rows)) for side in (0, 1)]
    wanted = [seat for seat in seats if held_at(comparison, seat).shown.value in scripted]
    if heard is script:
        wanted = seats if len(wanted) * 2 > len(seats) else []
    spoken = _numbers(heard, language)
    unsaid = [
        seat
        for seat in wanted
        if seat not in given and held_at(comparison, seat).shown.value not in spoken
    ]
    named = _named(heard, Follower(comparison, language)) if unsaid else {}
    for seat in unsaid:
        if seat in named:
            yield _fault(comparison, seat, named[seat], language.tag)


def _fault(comparison: Comparison, seat: Seat, offset: int, language: str) -> Fault:
    held = held_at(comparison, seat)
    name, value = held.name(language).words, held.shown.value
    number = f"{value:,} {comparison.stop.measure.unit}"
    what = f"“{name}” is named, and its number, {number}, is never said at this stop"
    return Fault(offset, frozenset({seat}), what, f"say {number}")


def _numbers(text: HeldText, language: Language) -> frozenset[Decimal]:
    return frozenset(
        number.value for said in text.said for number in language.numbers_in(said.text)
    )


def _named(text: HeldText, follower: Follower) -> dict[Seat, int]:
    """Foods named without a doubt, each with where it is named first."""
    named: dict[Seat, int] = {}
    for said in text.said:
        seats = follower.named(said)
        if len(seats) == 1:
            named.setdefault(next(iter(seats)), said.start)
    return named
