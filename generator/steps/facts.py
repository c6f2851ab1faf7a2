"""What the rest of a site wants to know of a lesson that is not looked into again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from pydantic import TypeAdapter

from generator.check.listed import Listed
from generator.check.standing import Standing, standing_of
from generator.compute.lacking_names import LackingName, lacking_names
from generator.compute.result import LessonResult
from generator.engine.pack import Fact
from generator.present.entry import LessonEntry, lesson_entry
from generator.present.pages.addresses import lesson_addresses
from generator.present.pictures.figures.of_moves import moves_of
from generator.problems import Problem
from generator.steps.work import WorkedLesson, listed_of


@dataclass(frozen=True, slots=True)
class LessonFacts:
    """Kept beside the files of a lesson."""

    listed: Listed
    """What the lists of lessons ask of it, in its own language."""
    entries: tuple[LessonEntry, ...]
    """For the lists of lessons, in each language that it has."""
    addresses: Mapping[str, Mapping[str, frozenset[str] | None]]
    """By language: its pages by their name in its folder; where stops have addresses, their ids."""
    questions: tuple[Problem, ...]
    """Problems it is published with."""
    moves: tuple[str, ...]
    """Ids of the moves whose figures it shows."""
    media: tuple[str, ...]
    """Names of the files beside it that are published."""
    lacking: tuple[LackingName, ...]
    """Names in the library that its languages lack."""
    stops: tuple[tuple[str, str], ...]
    """Kind and id of every stop."""
    stamps: Mapping[str, Mapping[str, str]]
    """By language: the print stamp of each sheet."""
    standing: Standing
    """What old links and printed sheets lead to in it."""


def facts_of(worked: WorkedLesson, stamps: Mapping[str, Mapping[str, str]]) -> LessonFacts:
    """What is kept of a lesson that nothing must be put right in.

    Args:
        worked: the lesson.
        stamps: by language, of its sheets, as it was made.
    """
    first = next(iter(worked.results.values()))
    lesson = first.lesson
    return LessonFacts(
        listed=listed_of(lesson),
        entries=tuple(map(lesson_entry, worked.results.values())),
        addresses={
            language: lesson_addresses(result) for language, result in worked.results.items()
        },
        questions=worked.problems,
        moves=tuple(moves_of([first])),
        media=media_of(first),
        lacking=tuple(name for one in worked.results.values() for name in lacking_names(one)),
        standing=standing_of(result.lesson for result in worked.results.values()),
        stops=tuple(
            (stop.kind, lesson.stop_id(index)) for index, stop in enumerate(lesson.file.stops)
        ),
        stamps=stamps,
    )


def media_of(result: LessonResult) -> tuple[str, ...]:
    """Names of the files beside a lesson that it shows."""
    video = result.lesson.file.video
    if video is None:
        return ()
    named = (video.file, video.smaller, video.slides, video.poster, *video.captions.values())
    return tuple(dict.fromkeys(name for name in named if name))


def to_facts(facts: LessonFacts) -> dict[str, Fact]:
    """As JSON can say it."""
    told = _adapter().dump_python(facts, mode="json")
    assert isinstance(told, dict)  # noqa: S101  # that is what a dataclass becomes
    return told


def from_facts(told: dict[str, Fact]) -> LessonFacts:
    """Back again.

    Raises:
        ValueError: these are no facts of a lesson.
    """
    return _adapter().validate_python(told)


@cache
def _adapter() -> TypeAdapter[LessonFacts]:
    return TypeAdapter(LessonFacts)
