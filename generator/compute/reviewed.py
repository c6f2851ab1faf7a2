"""For how much of a lesson somebody's reading still holds, and what has changed since."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import Enum

from generator.compute.result import LessonResult
from generator.compute.reviewable import MOVES_AT, ReadText, Reviewable, reviewable
from generator.model.lesson import Lesson
from generator.model.reviewed import Review


class Standing(Enum):
    """Whether a reading still holds."""

    WHOLE = "for everything"
    BUT_FOR = "but for what changed since"
    FALLEN = "for nothing any more"


@dataclass(frozen=True, slots=True)
class HeldReview:
    """A reading, held against the lesson as it is now, in one language."""

    review: Review
    """As it was kept."""
    number: int
    """Which entry of the file it is, from 0."""
    numbers: tuple[str, ...]
    """Names of today's numbers that were not read as they are."""
    texts: tuple[ReadText, ...]
    """Today's texts that were not read as they are."""
    facts: tuple[str, ...]
    """Names of what else follows from the lesson file and is not as it was."""
    numbers_gone: tuple[str, ...]
    """Names of numbers that were read and are in the lesson no more."""
    texts_gone: tuple[str, ...]
    """Where a text was read that is in the lesson no more."""
    holding: int
    """How many of today's numbers and texts were read as they are."""

    @property
    def standing(self) -> Standing:
        """Whether it still holds: where no number and no text is as it was read, it says nothing any more."""
        if not self.holding:
            return Standing.FALLEN
        of_numbers = self.numbers or self.numbers_gone or self.facts
        changed = of_numbers or self.texts or self.texts_gone
        return Standing.BUT_FOR if changed else Standing.WHOLE


def held_reviews(result: LessonResult) -> tuple[HeldReview, ...]:
    """The readings of a lesson in the language of its result; of a copied folder none, for it was another lesson."""
    lesson = result.lesson
    if lesson.reviewed is None or not of_this_lesson(lesson):
        return ()
    now, called = reviewable(result), _called_now(lesson)
    return tuple(
        held_review(_renamed(review, called), number, now, lesson.language)
        for number, review in enumerate(lesson.reviewed.file.reviews)
        if lesson.language in review.languages
    )


def of_this_lesson(lesson: Lesson) -> bool:
    """Whether the file beside a lesson tells of this lesson, by a name it has or had."""
    known = {lesson.id, *lesson.file.formerly}
    return lesson.reviewed is None or lesson.reviewed.file.lesson in known


def held_review(review: Review, number: int, now: Reviewable, language: str) -> HeldReview:
    """One reading against what there is to read now.

    Args:
        review: as it was kept.
        number: which entry of the file it is, from 0.
        now: what there is to read today in a language.
        language: which one.
    """
    read = {(_stop(name), one) for name, one in review.numbers.items()}
    marks = review.texts.get(language, {})
    seen = {(name, mark) for name, every in marks.items() for mark in every}
    new = tuple(name for name, one in now.numbers.items() if (_stop(name), one) not in read)
    texts = tuple(one for one in now.texts if (one.name, one.mark) not in seen)
    return HeldReview(
        review,
        number,
        new,
        texts,
        tuple(name for name, says in now.facts.items() if review.facts.get(name) != says),
        tuple(_numbers_gone(review, now, new)),
        tuple(_texts_gone(marks, now, texts)),
        len(now.numbers) - len(new) + len(now.texts) - len(texts),
    )


def _called_now(lesson: Lesson) -> Mapping[str, str]:
    """What stops are called now, by the names they had before."""
    pairs = zip(lesson.file.stops, lesson.ids, strict=True)
    return {name: ids.stop for stop, ids in pairs for name in stop.formerly}


def _renamed(review: Review, called: Mapping[str, str]) -> Review:
    """A reading with the names that stops have today."""
    if not called:
        return review

    def now(name: str) -> str:
        stop, dot, rest = name.partition(".")
        return f"{called.get(stop, stop)}{dot}{rest}"

    def of_fact(name: str) -> str:
        stop = name.removeprefix(MOVES_AT)
        return f"{MOVES_AT}{called[stop]}" if name != stop and stop in called else name

    changes = {
        "numbers": {now(name): one for name, one in review.numbers.items()},
        "facts": {of_fact(name): says for name, says in review.facts.items()},
        "texts": {
            language: {now(name): every for name, every in marks.items()}
            for language, marks in review.texts.items()
        },
    }
    return review.model_copy(update=changes)


def _stop(name: str) -> str:
    """The stop of a number, by its name in the ledger."""
    return name.partition(".")[0]


def _numbers_gone(review: Review, now: Reviewable, new: tuple[str, ...]) -> Iterator[str]:
    """Numbers that were read and are not there; one that is another under its name is told as new."""
    there = {(_stop(name), one) for name, one in now.numbers.items()}
    for name, one in review.numbers.items():
        if (_stop(name), one) not in there and name not in new:
            yield name


def _texts_gone(
    marks: Mapping[str, tuple[str, ...]], now: Reviewable, new: tuple[ReadText, ...]
) -> Iterator[str]:
    """Where a text was read and stands no more; where another stands instead, that one is told as new."""
    there = {(one.name, one.mark) for one in now.texts}
    changed = {one.name for one in new}
    for name, every in marks.items():
        if name not in changed and any((name, mark) not in there for mark in every):
            yield name
