"""Everything a rehearsal video is made of: pictures with their times, and a caption draft."""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction
from pathlib import Path

from generator.compute.result import LessonResult
from generator.compute.rounding import whole
from generator.model.captions import DRAFT_NOTE
from generator.model.film import REHEARSAL_MARK
from generator.model.lesson import Video
from generator.present.recording.captions import caption_draft
from generator.present.recording.slides.order import slides
from generator.present.recording.slides.picture import pictures
from generator.present.words.say import Say

__all__ = ["REHEARSAL_MARK", "Picture", "Rehearsal", "rehearsal"]


@dataclass(frozen=True, slots=True)
class Picture:
    """One slide, drawn."""

    png: bytes = field(repr=False)
    seconds: float
    """How long it is shown."""


@dataclass(frozen=True, slots=True)
class Rehearsal:
    """A video without a voice, ready to be encoded."""

    source: str
    """The lesson file, relative to the project's root."""
    video: str
    """Name of the file: the lesson's own, or its id with ``.mp4``."""
    captions: str
    """Name of the caption file: the lesson's own, or its id and language with ``.vtt``."""
    pictures: tuple[Picture, ...]
    """Empty where no stop of the lesson has a time."""
    webvtt: str = field(repr=False)
    draft_note: str = DRAFT_NOTE
    """A caption file that holds this sentence is a draft, and may be replaced."""

    @property
    def seconds(self) -> int:
        """Length of the video, to the whole second."""
        return whole(Fraction(sum(picture.seconds for picture in self.pictures)))


def _mp4(video: Video | None) -> str:
    """The film that a lesson names, if a rehearsal can stand in for it."""
    named = (video and video.file) or ""
    return named if named.lower().endswith(".mp4") else ""


def rehearsal(result: LessonResult, say: Say, theme: Path) -> Rehearsal:
    """Slides and captions of one lesson.

    Args:
        result: the lesson with its numbers.
        say: words of the language the lesson is written in.
        theme: the folder that holds ``slides.typ``.
    """
    lesson = result.lesson
    video = lesson.file.video
    shown = slides(result, say)
    drawn = pictures(shown, theme)
    return Rehearsal(
        source=lesson.places.file,
        video=_mp4(video) or f"{lesson.id}.mp4",
        captions=(video.captions.get(say.language) if video else None)
        or f"{lesson.id}.{say.language}.vtt",
        pictures=tuple(
            Picture(png, slide.duration / 1000) for png, slide in zip(drawn, shown, strict=True)
        ),
        webvtt=caption_draft(lesson),
    )
