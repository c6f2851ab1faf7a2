"""The recording of a lesson: what the player shows, and where its chapters begin."""

from __future__ import annotations

from collections.abc import Mapping
from urllib.parse import urlsplit

from generator.compute.result import LessonResult
from generator.compute.timeline import Span, parts, pause_points, seconds
from generator.model.lesson import Video
from generator.model.moment import clock
from generator.present.pages.page import Surround
from generator.present.pages.take_home import megabytes
from generator.present.pictures.plums.files import poster_path
from generator.present.pictures.plums.hung import hung
from generator.present.recording.chapters import chapters_file
from generator.present.views.stop import StopView
from generator.present.views.video import ChapterView, ElsewhereView, FilmView, TrackView, VideoView
from generator.present.words.families import FILM
from generator.present.words.say import Say, digits


def video_view(
    result: LessonResult, stops: tuple[StopView, ...], surround: Surround
) -> VideoView | None:
    """The player and what stands around it; nothing where the lesson names no recording."""
    lesson, video = result.lesson, result.lesson.file.video
    if not video:
        return None
    track = chapters_file(result, surround.say)
    return VideoView(
        src=f"{lesson.id}/{video.file}" if video.file else "",
        poster=f"{lesson.id}/{video.poster}" if video.poster else _cover(result),
        films=_films(result, surround.say),
        tracks=_tracks(video, lesson.id, surround),
        chapters_track=track and f"{surround.folder}{lesson.id}/{track}",
        pauses=_pauses(result),
        chapters=chapters(result, stops),
        elsewhere=_elsewhere(video, surround.say),
    )


def chapters(result: LessonResult, stops: tuple[StopView, ...]) -> tuple[ChapterView, ...]:
    """The parts of the video, one for each stop that has a time in it."""
    return tuple(_chapter(span, stops[span.index]) for span in parts(result.lesson.file.stops))


def shown_language(captions: Mapping[str, object], language: str) -> str | None:
    """Which captions stand on a page: those in its language, else the first; none where there are none."""
    return language if language in captions else next(iter(captions), None)


def _tracks(video: Video, lesson: str, surround: Surround) -> tuple[TrackView, ...]:
    """The captions, those that are shown first."""
    say = surround.say
    shown = shown_language(video.captions, say.language)
    return tuple(
        TrackView(
            f"{lesson}/{video.captions[language]}",
            language,
            say.language_name(language),
            default=language == shown,
        )
        for language in sorted(video.captions, key=lambda language: language != shown)
    )


def _films(result: LessonResult, say: Say) -> tuple[FilmView, ...]:
    """The film and what is made of it for homes whose internet is metered."""
    lesson, video = result.lesson, result.lesson.file.video
    if not video or not (video.smaller or video.slides):
        return ()
    named = {"file": video.file, "smaller": video.smaller, "slides": video.slides}
    return tuple(
        FilmView(f"{lesson.id}/{name}", kind, say(FILM.key(kind), size=megabytes(film.size, say)))
        for kind, name in named.items()
        if name and (film := lesson.films.get(kind))
    )


def _pauses(result: LessonResult) -> tuple[tuple[str, str], ...]:
    return tuple(
        (digits(seconds(span.end)), result.lesson.stop_id(span.index))
        for span in pause_points(result.lesson.file.stops)
    )


def _chapter(span: Span, stop: StopView) -> ChapterView:
    return ChapterView(
        label=stop.head.heading,
        href=f"#{stop.head.id}",
        at=clock(seconds(span.start)),
        start=_seconds(span.start),
        end=_seconds(span.end),
        pause=stop.head.at.text if span.pauses and stop.head.at else "",
    )


def _seconds(milliseconds: int) -> float:
    """Whole where it is, for a page carries many of them."""
    return milliseconds / 1000 if milliseconds % 1000 else milliseconds // 1000


def _cover(result: LessonResult) -> str:
    """Before a film without a still of its own: its lesson's gaps as plums; empty where it compares nothing."""
    return poster_path(result.lesson.id) if hung(result) else ""


def _elsewhere(video: Video, say: Say) -> ElsewhereView | None:
    if not video.elsewhere:
        return None
    key = "video_or_elsewhere" if video.file else "video_elsewhere"
    return ElsewhereView(video.elsewhere, say(key, host=urlsplit(video.elsewhere).hostname))
