"""A lesson: one folder with a lesson file and its media."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Annotated

from pydantic import Field

from generator.model.base import Frozen
from generator.model.grades import GradeSpan
from generator.model.places import Places
from generator.model.stops import Stop
from generator.model.stops.base import Text


class Video(Frozen):
    """The recording of a lesson."""

    file: str
    """MP4 beside the lesson file."""
    captions: Mapping[str, str] = {}
    """WebVTT file by language."""
    poster: str | None = None
    """A still picture shown before the video."""


class LessonHead(Frozen):
    """What a lesson file says before its stops."""

    title: Text
    """What the lesson is called."""
    summary: Text
    """One or two sentences for the list of lessons."""
    grades: GradeSpan
    """School grades: ``K-2``, ``3-5`` or ``4``. Caps on moves follow the youngest."""
    minutes: Annotated[int, Field(gt=0, le=120)]
    """How long the whole lesson takes, moving and talking included."""
    you_need: tuple[Text, ...] = ()
    """What to have at hand."""
    goals: tuple[Text, ...] = ()
    """What the learner will be able to do."""
    standards: tuple[str, ...] = ()
    """Codes of the Common Core State Standards for Mathematics."""
    video: Video | None = None
    """The recording; a lesson works without one."""


class LessonFile(LessonHead):
    """What a lesson file says."""

    stops: Annotated[tuple[Annotated[Stop, Field(discriminator="kind")], ...], Field(min_length=1)]


@dataclass(frozen=True, slots=True)
class Lesson:
    """A lesson as read, with the place of each of its parts."""

    id: str
    """Name of its folder, and its address on the site."""
    file: LessonFile
    places: Places
    duration: float | None = None
    """Length of the video in seconds, where there is one."""

    def stop_id(self, index: int) -> str:
        """The stop's address: its own id, or its kind and its number among its kind."""
        stop = self.file.stops[index]
        if stop.id:
            return stop.id
        number = sum(1 for other in self.file.stops[: index + 1] if other.kind == stop.kind)
        return f"{stop.kind}-{number}"
