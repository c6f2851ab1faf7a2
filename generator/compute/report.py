"""What a report says of all codes: reach, stops done and learning of groups, small counts hidden."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from generator.compute.answered import Answered, answered
from generator.compute.learned import Learned, learned
from generator.compute.small_counts import Part, part, shown
from generator.model.tally import LessonKey, Reach, RightAnswers, Tally


@dataclass(frozen=True, slots=True)
class StopReport:
    """One stop of a lesson."""

    stop: str
    """Its id."""
    done: Part
    """How many of the lesson's codes say that it is done."""


@dataclass(frozen=True, slots=True)
class LessonReport:
    """One lesson as it stood; nothing but its name where its codes are hidden."""

    key: LessonKey
    """Which lesson it is, and with which numbers."""
    codes: int | None
    """How many there are; nothing where they are hidden."""
    minutes: int | None
    """Where the step of minutes begins that half of the codes reach or pass."""
    stops: tuple[StopReport, ...]
    """In the order of the page."""
    answers: tuple[Answered, ...]
    """In the order of the page; without those that ``learned`` tells of."""
    learned: tuple[Learned, ...]
    """One for each question that is asked twice."""


@dataclass(frozen=True, slots=True)
class Report:
    """Everything a report says."""

    lessons: tuple[LessonReport, ...]
    """In the order of the tally."""
    codes: int | None
    """Of all lessons; nothing where that would tell a small count."""
    codes_shown: int
    """Of the lessons whose codes are shown."""
    same: Part | None
    """Codes of the lessons shown that are equal to another one of the same file; nothing where none is shown."""
    at_least: int
    """The smallest count that is shown."""


def report(
    tally: Tally,
    stops: Mapping[str, Sequence[str]],
    answers: Mapping[LessonKey, Sequence[str]],
    at_least: int,
) -> Report:
    """What may be said, in the order of the tally.

    Args:
        tally: what was counted.
        stops: by lesson the ids of its stops, in the order of the page, where they are known; a stop
            that no code names is then told as well.
        answers: by lesson the ids of its answers, without those to questions that are asked again,
            where they are known.
        at_least: the smallest count that is shown.
    """
    reach = shown([one.codes for one in tally.reach], at_least)
    lessons = tuple(
        _lesson(one, tally, stops.get(one.key.lesson, ()), answers.get(one.key), at_least)
        if codes
        else _hidden(one.key)
        for one, codes in zip(tally.reach, reach.counts, strict=True)
    )
    seen = sum(count or 0 for count in reach.counts)
    kept = {one.key for one in lessons if one.codes}
    twins = sum(one.codes for one in tally.same if one.key in kept)
    same = part(twins, seen, at_least) if seen else None
    return Report(lessons, reach.total, seen, same, at_least)


def _hidden(key: LessonKey) -> LessonReport:
    return LessonReport(key, None, None, (), (), ())


def _lesson(
    reach: Reach, tally: Tally, known: Sequence[str], answers: Sequence[str] | None, at_least: int
) -> LessonReport:
    done = {one.stop: one.codes for one in tally.stops if one.key == reach.key}
    names = list(dict.fromkeys((*_of_page(known, done), *sorted(done))))
    return LessonReport(
        reach.key,
        reach.codes,
        reach.minutes,
        tuple(StopReport(name, part(done.get(name, 0), reach.codes, at_least)) for name in names),
        tuple(answered(one, reach.codes, at_least) for one in _told(reach.key, tally, answers)),
        tuple(learned(one, at_least) for one in tally.twice if one.key == reach.key),
    )


def _told(key: LessonKey, tally: Tally, known: Sequence[str] | None) -> Iterable[RightAnswers]:
    """The answers of a lesson that may be told beside what was learned.

    An answer to a question that is asked again is told there, of the codes with both answers: told
    here too, of all codes, one would tell of the other. Where nobody knows which answers these are,
    none is told.
    """
    right = {one.answer: one for one in tally.right if one.key == key}
    if not right:
        return ()
    if known is None:
        return () if any(one.key == key for one in tally.twice) else right.values()
    return (right.get(name, RightAnswers(key, name, 0, 0, 0)) for name in known)


def _of_page(known: Sequence[str], done: Iterable[str]) -> Sequence[str]:
    """The stops of a page; none where the codes are of one with other stops."""
    return known if set(done) <= set(known) else ()
