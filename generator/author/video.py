"""From the file of a camera to the films of a lesson: the steps of ``plumline video``."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from generator.author.recording import worked_lesson
from generator.carried import theme_of
from generator.compute.result import LessonResult
from generator.media.film import is_marked
from generator.model.film import REHEARSAL_MARK
from generator.present.recording.rehearsal import Picture, rehearsal
from generator.present.recording.slides.picture import TooFullError
from generator.present.words.say import Say
from generator.problems import LessonError, Place, Problem
from generator.read.media import lies_beside
from generator.write.encoder import EncoderError, encoder, how_to_install
from generator.write.films import MARK, Making, in_the_way, make_films


@dataclass(frozen=True, slots=True)
class MadeFilm:
    """A file that was made."""

    key: str
    """The key under ``video:`` that names it."""
    file: Path
    megabytes: Fraction
    is_named: bool
    """Whether the lesson names it already."""


def make_video(
    root: Path, lesson: str, source: Path | None, still_at: Fraction | None
) -> tuple[MadeFilm, ...]:
    """Make the films of a lesson from a camera's file, beside the lesson and nowhere else.

    Args:
        root: folder of the site.
        lesson: name of its folder.
        source: the camera's file; without one, the film that the lesson names.
        still_at: seconds to the moment of the still picture.

    Raises:
        LessonError: something in the lesson must be put right, there is no film to make others from,
            somebody's file is in the way, or the encoder is not installed or fails.
    """
    result, say = worked_lesson(root, lesson)
    folder = root / "lessons" / lesson
    source = source or _own_film(result, folder)
    making = Making(source, folder, _slides(result, say, root), still_at)
    program = encoder()
    if program is None:
        what = "the part that makes videos is not installed"
        raise _problem(result, what, how_to_install())
    if file := in_the_way(making):
        what = f"`{file.name}` is there already and was not made by this command"
        raise _problem(result, what, "move it away or give it another name")
    try:
        made = make_films(making, program)
    except EncoderError as error:
        what = f"no film could be made of `{source.name}` ({error})"
        hint = "see whether a player shows it, and whether the disk is full"
        raise _problem(result, what, hint) from None
    video = result.lesson.file.video
    named = video.model_dump() if video else {}
    return tuple(
        MadeFilm(key, file, Fraction(file.stat().st_size, 1_000_000), named.get(key) == file.name)
        for key, file in made.items()
    )


def _own_film(result: LessonResult, folder: Path) -> Path:
    """The film that a lesson names, where it is one of a camera's."""
    video = result.lesson.file.video
    if not (video and video.file and lies_beside(folder, video.file)):
        what = "this lesson names no film that others could be made from"
        raise _problem(result, what, _name_it(result))
    film = folder / video.file
    for mark, kind in ((REHEARSAL_MARK, "a rehearsal"), (MARK, "made by this command already")):
        if is_marked(film, mark):
            what = f"`{video.file}` is {kind} and no film of a camera"
            raise _problem(result, what, _name_it(result))
    return film


def _name_it(result: LessonResult) -> str:
    return f"name the camera's file: python3 generator video {result.lesson.id} FILE"


def _slides(result: LessonResult, say: Say, root: Path) -> tuple[Picture, ...]:
    """The slides with their times; none where the lesson has no times, or a slide no room."""
    try:
        return rehearsal(result, say, Path(theme_of(root))).pictures
    except TooFullError:  # `rehearse` tells which
        return ()


def _problem(result: LessonResult, what: str, hint: str) -> LessonError:
    return LessonError([Problem(Place(result.lesson.places.file), what, hint)])
