"""A reading by somebody who knows that does not hold for all of a lesson any more."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from generator.check.rule import rule, rule_of_words
from generator.compute.result import LessonResult
from generator.compute.reviewed import HeldReview, Standing, held_reviews, of_this_lesson
from generator.model.reviewed import OWN, Reviewed
from generator.problems import Problem, Weight

_MOST = 3
"""Names in a sentence; of more, their number."""


@rule
def readings_of_this_lesson(result: LessonResult) -> Iterator[Problem]:
    """A file that came along with a copy, or tells of a language that the lesson has no more."""
    lesson, reviewed = result.lesson, result.lesson.reviewed
    if reviewed is None:
        return
    if not of_this_lesson(lesson):
        other = reviewed.file.lesson
        yield Problem(
            reviewed.places.at("lesson"),
            f"these readings are of the lesson `{other}`, so they say nothing of this one",
            "take the file out of this folder if it came along with a copy, or write "
            f"`formerly: [{other}]` in lesson.yaml if the folder was renamed",
            Weight.QUESTION,
        )
        return
    for number, one in enumerate(reviewed.file.reviews):
        for at, tag in enumerate(one.languages):
            if tag not in {lesson.language, *lesson.translations}:
                yield Problem(
                    reviewed.places.at("reviews", number, "languages", at),
                    f"this was read in `{tag}`, which the lesson is not there in",
                    "take the language out, or the whole reading where it has no other",
                    Weight.QUESTION,
                )


@rule_of_words
def read_as_it_stands(result: LessonResult) -> Iterator[Problem]:
    """Each reading with what changed since; numbers once, texts in each language of the reading."""
    if reviewed := result.lesson.reviewed:
        for held in held_reviews(result):
            yield from _of_review(held, result, reviewed)


def _of_review(held: HeldReview, result: LessonResult, reviewed: Reviewed) -> Iterator[Problem]:
    review, lesson = held.review, result.lesson
    there = {result.library.site.languages[0], *lesson.translations}
    first = next(tag for tag in review.languages if tag in there)
    changed = tuple(_changed(held, numbers=first == lesson.language))
    if not changed:
        return
    role = review.by.get(lesson.language) or review.by.get(OWN) or next(iter(review.by.values()))
    since = f"{role} read this on {review.on}, and since then {_listed(changed)} changed"
    fallen = held.standing is Standing.FALLEN
    yield Problem(
        reviewed.places.at("reviews", held.number),
        f"{since}{'; nothing of it holds any more, so the notes do not name it' if fallen else ''}",
        f'have that read, then keep it: python3 generator reviewed {lesson.id} --by "{role}"',
        Weight.QUESTION,
    )


def _changed(held: HeldReview, *, numbers: bool) -> Iterator[str]:
    """What changed, each kind of it in a few words."""
    if numbers:
        yield from _few("number", (*held.numbers, *held.numbers_gone))
        yield from _few("fact", held.facts)
    yield from _few("text", (*(one.name for one in held.texts), *held.texts_gone))


def _few(what: str, names: Sequence[str]) -> Iterator[str]:
    if names:
        known = tuple(dict.fromkeys(names))
        shown = ", ".join(f"`{name}`" for name in known[:_MOST])
        more = f" and {len(known) - _MOST} more" if len(known) > _MOST else ""
        yield f"{what}{'s'[: len(known) != 1]} {shown}{more}"


def _listed(parts: Sequence[str]) -> str:
    *most, last = parts
    return f"{', '.join(most)} and {last}" if most else last
