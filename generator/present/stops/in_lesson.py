"""A stop in its lesson: all that its pages, papers and slides are made from."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

from generator.compute.answers import PARTING
from generator.compute.result import LessonResult
from generator.model.stops.base import BaseStop
from generator.present.views.stop import Head
from generator.present.words.families import STOP
from generator.present.words.number import moment
from generator.present.words.prose import plain
from generator.present.words.say import Say

S_co = TypeVar("S_co", bound=BaseStop, covariant=True)


@dataclass(frozen=True, slots=True)
class StopInLesson(Generic[S_co]):
    """One stop, the numbers of its lesson, and the words they are put into."""

    stop: S_co
    index: int
    """Its place among the stops, from 0."""
    result: LessonResult
    say: Say
    folder: str = ""
    """Where its lesson's pages stand, from the site's root: ``es/soup/``."""

    @property
    def id(self) -> str:
        """Its address on the page."""
        return self.result.lesson.stop_id(self.index)

    @property
    def heading(self) -> str:
        """Its own title, or its kind's word."""
        return self.stop.title or self.say(STOP.key(self.stop.kind))

    @property
    def plain_heading(self) -> str:
        """The heading where no Markdown is read: on slides."""
        return plain(self.stop.title) if self.stop.title else self.heading

    def head(self) -> Head:
        """What its view begins with."""
        at = None if self.stop.at is None else moment(self.stop.at)
        return Head(
            kind=self.stop.kind,
            id=self.id,
            heading=self.heading,
            at=at,
            formerly=self.stop.formerly,
        )


def in_lesson(
    index: int, result: LessonResult, say: Say, folder: str = ""
) -> StopInLesson[BaseStop]:
    """The stop at an index of a lesson."""
    return StopInLesson(result.lesson.file.stops[index], index, result, say, folder)


def stop_names(result: LessonResult, say: Say) -> dict[str, str]:
    """By id, in the order of the page, what each stop is called where no Markdown is read.

    The parting question is among them, where the lesson has one.
    """
    names = {
        ids.stop: in_lesson(at, result, say).plain_heading
        for at, ids in enumerate(result.lesson.ids)
    }
    return names | ({PARTING: say("parting_title")} if result.lesson.file.parting else {})
