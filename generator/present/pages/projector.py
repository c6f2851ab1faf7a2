"""A lesson for a projector: the stops as the lesson's page shows them, one a screen."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from generator.compute.result import LessonResult
from generator.model.moment import clock
from generator.present.pages.film_parts import film_parts
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import stops_on_page
from generator.present.pages.parting import parting_view
from generator.present.pages.video import video_view
from generator.present.pictures.block_shapes import block_shapes
from generator.present.pictures.plums.files import cover_path
from generator.present.pictures.plums.hung import hung
from generator.present.recording.corrections import corrections
from generator.present.stops.kind import Paper
from generator.present.stops.kinds import kind_of
from generator.present.views.projector import ProjectorView, ScreenView, StretchView
from generator.present.views.stop import StopView
from generator.present.views.video import ChapterView, VideoView
from generator.present.words.care import care_lines
from generator.present.words.say import Say

TIMER = (1, 2, 3, 5)
"""Minutes its timer can be set to; common practice, no source."""


def projector_view(told: PageInLesson) -> ProjectorView:
    """Everything the page for a projector shows."""
    result, stops, surround, links = told.result, told.stops, told.surround, told.links
    say = surround.say
    video = video_view(result, stops, surround)
    places = stops_on_page(
        stops, told.page, corrections(result, say), film=False, parts=film_parts(result, say)
    )
    stretches = _stretches(video, say)
    return ProjectorView(
        page=told.page,
        title=result.lesson.file.title,
        video=video,
        screens=links.screens,
        stops=tuple(
            ScreenView(
                replace(place, holds_player=False),
                stretches.get(place.stop.head.id),
                _cover(place.stop, result),
            )
            for place in places
        ),
        shapes=block_shapes(places),
        parting=parting_view(result, say),
        with_numbers=bool(result.comparisons or result.days),
        care=care_lines(result, say),
        ways=(links.lesson, *links.teachers),
        timer=tuple((minutes, say("projector_minutes", n=minutes)) for minutes in TIMER),
    )


def _cover(stop: StopView, result: LessonResult) -> str:
    """A screen that only says what to watch is not left empty; there is no drawing where nothing is compared."""
    watched = kind_of(stop).paper is Paper.LEFT_OUT
    return cover_path(result.lesson.id) if watched and hung(result) else ""


def _stretches(video: VideoView | None, say: Say) -> Mapping[str, StretchView]:
    """What of the site's own film leads to each stop, by the stop's id."""
    if not (video and video.src):
        return {}
    return {
        one.href.removeprefix("#"): StretchView(
            one.start, say("projector_film", start=one.at, end=_halt(video.chapters[n:]))
        )
        for n, one in enumerate(video.chapters)
    }


def _halt(chapters: Sequence[ChapterView]) -> str:
    """Where the film halts that is played from the first of these on: at the next pause point, or at its end."""
    pause = next((one.pause for one in chapters if one.pause), "")
    return pause or clock(Decimal(chapters[-1].end))
