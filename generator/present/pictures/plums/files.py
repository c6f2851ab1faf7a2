"""The files of a lesson's drawing: its cover in two shapes, the picture of a shared link, and all with its numbers."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.result import LessonResult
from generator.present.output import Output
from generator.present.pictures.colours import LIGHT
from generator.present.pictures.plums.drawing import COVER, FLAT, NUMBERED, POSTER, drawn
from generator.present.pictures.plums.hung import Hung, hung
from generator.present.pictures.plums.png import png
from generator.present.pictures.plums.svg import colours_of, plums_file
from generator.present.words.say import Say

SHARED = (600, 315)
"""Dots of the picture that a shared link shows: common practice, no source."""
NUMBERED_FILE = "plums-numbers.svg"
"""The drawing with its numbers, in the folder of the lesson in a language."""


def cover_path(lesson: str) -> str:
    """The cover of a lesson, from the site's root; the same in all languages."""
    return f"{lesson}/plums.svg"


def flat_path(lesson: str) -> str:
    """The cover for narrow screens."""
    return f"{lesson}/plums-flat.svg"


def poster_path(lesson: str) -> str:
    """What is seen of the film before it plays."""
    return f"{lesson}/plums-poster.svg"


def shared_path(lesson: str) -> str:
    """The picture that a shared link shows."""
    return f"{lesson}/plums.png"


def cover_files(result: LessonResult) -> Iterator[Output]:
    """What is the same in all languages of a lesson; nothing where it compares nothing."""
    rows, lesson = hung(result), result.lesson
    if not rows:
        return
    source = lesson.places.file
    yield Output(cover_path(lesson.id), plums_file(drawn(rows, COVER)).encode(), source=source)
    yield Output(flat_path(lesson.id), plums_file(drawn(rows, FLAT)).encode(), source=source)
    if lesson.file.video and not lesson.file.video.poster:
        poster = plums_file(drawn(rows, POSTER)).encode()
        yield Output(poster_path(lesson.id), poster, source=source)
    yield Output(shared_path(lesson.id), _shared(rows), source=source)


def numbered(result: LessonResult, say: Say) -> str:
    """The drawing with its numbers; empty where a lesson compares nothing."""
    rows = hung(result)
    numbers = tuple(say.number(row.gap) for row in rows)
    return plums_file(drawn(rows, NUMBERED), numbers) if rows else ""


def _shared(rows: tuple[Hung, ...]) -> bytes:
    """As high as the picture, in its middle."""
    return png(drawn(rows, COVER), colours_of(LIGHT), SHARED, SHARED[1] / COVER.height)
