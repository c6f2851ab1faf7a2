"""Keeping that somebody read a lesson: the numbers and texts as they stand, under a role and a day."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from pydantic import TypeAdapter, ValidationError

from generator.author.reviewed_text import reviewed_text
from generator.compute.result import LessonResult
from generator.compute.reviewable import Reviewable, reviewable
from generator.compute.reviewed import of_this_lesson
from generator.model.lesson import Lesson
from generator.model.reviewed import OWN, Review
from generator.model.role import LONGEST_ROLE, Role
from generator.model.texts import in_language
from generator.problems import LessonError
from generator.read.lesson import read_lesson
from generator.read.library import read_library
from generator.steps.filled import worked_out
from generator.write.reviewed import write_reviewed

_ROLE: TypeAdapter[str] = TypeAdapter(Role)


class NotARoleError(ValueError):
    """What was given for a role is none; a sentence with its way out."""


class NotItsLanguageError(ValueError):
    """A lesson has no such language; a sentence with those it has."""


@dataclass(frozen=True, slots=True)
class Kept:
    """What was kept of a reading."""

    file: Path
    numbers: int
    """How many it was given for."""
    texts: int
    """How many, in all its languages."""


def roles_of(written: Sequence[str]) -> Mapping[str, str]:
    """Roles by language: ``es: dietista`` is that of a language, one without is that of the lesson's own.

    Raises:
        NotARoleError: one looks like a name, is too long, or two are for one language.
    """
    found: dict[str, str] = {}
    for one in written:
        tag, colon, rest = one.partition(":")
        own = not colon or not tag.strip().replace("-", "").isalpha() or len(tag.strip()) > 8
        language, says = (OWN, one) if own else (tag.strip(), rest)
        if language in found:
            raise NotARoleError(f"`{one}` is a second role: give one for each language")
        found[language] = _role(says)
    return found


def _role(says: str) -> str:
    """A role without what stands around it.

    Raises:
        NotARoleError: it is none.
    """
    try:
        return _ROLE.validate_python(says)
    except ValidationError as error:
        (first, *_) = error.errors()
        why = first.get("ctx", {}).get("error")
        long = f"is no role: use 1 to {LONGEST_ROLE} characters"
        raise NotARoleError(f"`{says.strip()[:80]}` {why or long}") from None


def keep_review(
    root: Path, lesson: str, by: Mapping[str, str], on: str, languages: Sequence[str]
) -> Kept:
    """Keep that a lesson was read as it stands.

    Args:
        root: folder of the site.
        lesson: its folder's name.
        by: the role, by language.
        on: the day, as ``2026-03-14``.
        languages: in which it was read; the lesson's own without one.

    Raises:
        LessonError: something in the lesson must be put right.
        NotItsLanguageError: it was read in a language that it has not.
    """
    results = every_language(root, lesson)
    own = next(iter(results.values())).lesson
    read = tuple(dict.fromkeys(languages)) or (own.language,)
    for tag in (*read, *(tag for tag in by if tag != OWN)):
        if tag not in results:
            listed = ", ".join(f"`{one}`" for one in results)
            raise NotItsLanguageError(f"this lesson is not there in `{tag}`; it is in {listed}")
    named = {own.language if tag == OWN and len(by) > 1 else tag: by[tag] for tag in by}
    review = review_of({tag: results[tag] for tag in read}, named, on)
    text = reviewed_text(lesson, (*_others(own, review), review))
    file = write_reviewed(root / "lessons" / lesson, text)
    every = (marks for names in review.texts.values() for marks in names.values())
    return Kept(file, len(review.numbers), sum(map(len, every)))


def every_language(root: Path, lesson: str) -> Mapping[str, LessonResult]:
    """A lesson with its numbers in each language it has, its own first, whatever its video is like.

    Raises:
        LessonError: something in the lesson must be put right.
    """
    library = read_library(root)
    read = read_lesson(root, f"lessons/{lesson}/lesson.yaml", library, filmed=False)
    if not isinstance(read, Lesson):
        raise LessonError(read)
    others = (tag for tag in library.site.languages if tag in read.translations)
    return {read.language: worked_out(read, library)} | {
        tag: worked_out(in_language(read, tag, str, str), library) for tag in others
    }


def review_of(results: Mapping[str, LessonResult], by: Mapping[str, str], on: str) -> Review:
    """A reading of a lesson as it stands.

    Args:
        results: the lesson in each language in which it was read.
        by: the role, by language.
        on: the day, as ``2026-03-14``.
    """
    now = {tag: reviewable(one) for tag, one in results.items()}
    first = next(iter(now.values()))
    return Review.model_construct(
        by=by,
        on=on,
        languages=tuple(now),
        numbers=first.numbers,
        facts=first.facts,
        texts={tag: _marks(one) for tag, one in now.items()},
    )


def _marks(one: Reviewable) -> Mapping[str, tuple[str, ...]]:
    """By where they stand, the marks of texts, each once."""
    found: defaultdict[str, dict[str, None]] = defaultdict(dict)
    for text in one.texts:
        found[text.name][text.mark] = None
    return {name: tuple(marks) for name, marks in found.items()}


def _others(lesson: Lesson, new: Review) -> Iterator[Review]:
    """The readings that stay; one by the same role takes the place of an older one in the same languages."""
    if lesson.reviewed is None or not of_this_lesson(lesson):
        return
    for one in lesson.reviewed.file.reviews:
        same = set(one.by.values()) & set(new.by.values())
        if not (same and set(one.languages) <= set(new.languages)):
            yield one
