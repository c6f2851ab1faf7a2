"""The film a lesson has: whether families see and hear it, and what it costs them to watch."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import Rule, rule
from generator.compute.result import LessonResult
from generator.model.film import Film, Sound
from generator.model.personal import said
from generator.problems import Problem, Weight

_MEGABYTE = 1_000_000
_HEAVY, _REFUSED = 50, 100
"""MB of a file from which forges warn, and which they refuse: common practice, from memory, no source."""

_APART = 1.5
"""Seconds: an encoder ends a film with its last whole picture or the last of its sound."""


@rule
def film_as_exported(result: LessonResult) -> Iterator[Problem]:
    """Questions about the film, each with the setting to export it with."""
    lesson, video = result.lesson, result.lesson.file.video
    if not (video and video.file and lesson.film):
        return
    place = lesson.places.at("video", "file")
    make = f"let `python3 generator video {lesson.id}` make it"
    for what, hint in (
        *_heard(lesson.film, silent=video.silent),
        *_shown(lesson.film, make),
        *_heavy(lesson.film, make),
    ):
        yield Problem(place, f"`{video.file}` {what}", hint, Weight.QUESTION)


@rule
def films_of_one_length(result: LessonResult) -> Iterator[Problem]:
    """Questions about smaller films that are not the film any more: their pauses would come elsewhere."""
    films, video = result.lesson.films, result.lesson.file.video
    for key, name in (("smaller", video.smaller), ("slides", video.slides)) if video else ():
        if name and {"file", key} <= films.keys():
            apart = abs(films[key].seconds - films["file"].seconds)
            if apart > _APART:
                what = f"`{name}` is {apart:,.0f} seconds longer or shorter than the film"
                hint = f"make it from the film of today: python3 generator video {result.lesson.id}"
                place = result.lesson.places.at("video", key)
                yield Problem(place, what, hint, Weight.QUESTION)


@rule
def captions_read(result: LessonResult) -> Iterator[Problem]:
    """Questions about captions that are still the draft made from the script."""
    for captions in result.lesson.captions.values():
        if captions.draft:
            what = "these captions are a draft that nobody has read"
            hint = "read them while you listen to the film, then delete the note that says so"
            yield Problem(captions.draft, what, hint, Weight.QUESTION)


@rule
def personal_left_out(result: LessonResult) -> Iterator[Problem]:
    """What is taken out of the lesson's files, so that the educator knows it was in there."""
    for one in result.lesson.left_out:
        what = f"`{one.name}` also tells {said(one.told)}; that is left out of what is published"
        hint = "your own file stays as it is: think of it before you send that to anybody"
        yield Problem(result.lesson.places.at(*one.path), what, hint, Weight.QUESTION)


def _heard(film: Film, *, silent: bool) -> Iterator[tuple[str, str]]:
    if film.sound is Sound.UNKNOWN:
        yield "has a sound that not every browser plays", "export it again with AAC for its sound"
    if silent:
        return
    if film.rehearsal:
        hint = "put your film in its place, or write `silent: true` under `video:` if it is meant"
        yield "is the silent rehearsal made of the slides", hint
    elif film.sound is Sound.NONE:
        hint = "export it again with AAC for its sound, or write `silent: true` under `video:`"
        yield "has no sound", hint


def _shown(film: Film, make: str) -> Iterator[tuple[str, str]]:
    if not film.begins_at_once:
        hint = f"export it with its index first (“fast start”, “for the web”), or {make}"
        yield "has its index at its end and cannot play while it loads", hint
    if not film.old_phones:
        yield "has a picture that older phones do not play", f"export it with H.264, or {make}"


def _heavy(film: Film, make: str) -> Iterator[tuple[str, str]]:
    size = film.size / _MEGABYTE
    if size > _REFUSED:
        what = f"has {size:,.0f} MB, and most forges refuse a file of more than {_REFUSED} MB"
        yield what, f"{make} smaller, or put it on another site and name that under `elsewhere:`"
    elif size > _HEAVY:
        what = f"has {size:,.0f} MB, which a family pays for where the internet is metered"
        yield what, f"{make} smaller"


FILM_RULES: tuple[Rule, ...] = (
    film_as_exported,
    films_of_one_length,
    personal_left_out,
    captions_read,
)
