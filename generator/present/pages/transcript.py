"""What is said in a video, to be read: the captions as whole sentences, under the stops they lead to."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import groupby

from generator.compute.timeline import on_air, parts, seconds
from generator.model.captions import CaptionFile, Cue
from generator.model.moment import clock
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.open_data import film_data
from generator.present.pages.video import shown_language
from generator.present.views.page import LinkView
from generator.present.views.video import SaidView, TranscriptView

_ENDED = re.compile(r"[.?!…][\")»”’]*$")


def transcript_view(told: PageInLesson) -> TranscriptView:
    """The page with all that is said, in the page's language where there are captions in it."""
    lesson = told.result.lesson
    language = shown_language(lesson.captions, told.surround.say.language) or lesson.language
    return TranscriptView(
        page=told.page,
        title=lesson.file.title,
        back=told.links.lesson,
        language=language,
        parts=_parts(lesson.captions[language], told),
        open_data=film_data(told.result, told.stops, told.surround),
    )


def sentences(cues: Sequence[Cue]) -> tuple[tuple[int, str], ...]:
    """Whole sentences, each with the ms at which its first caption appears."""
    said: list[tuple[int, str]] = []
    ended = True
    for cue in cues:
        if ended or not said:
            said.append((cue.start_ms, cue.text))
        else:
            said[-1] = (said[-1][0], f"{said[-1][1]} {cue.text}")
        ended = bool(_ENDED.search(cue.text))
    return tuple(said)


def _parts(
    file: CaptionFile, told: PageInLesson
) -> tuple[tuple[LinkView, tuple[SaidView, ...]], ...]:
    """The sentences, under the stop that is on when they begin."""
    found = parts(told.result.lesson.file.stops)

    def chapter(said: tuple[int, str]) -> int | None:
        return on_air(found, said[0]).index if found else None

    return tuple(
        (
            _link(index, told),
            tuple(SaidView(clock(seconds(start)), text) for start, text in group),
        )
        for index, group in groupby(sentences(file.cues), key=chapter)
    )


def _link(index: int | None, told: PageInLesson) -> LinkView:
    """To the stop; to the lesson where none of its stops has a time."""
    lesson = told.links.lesson.href
    if index is None:
        return LinkView(lesson, told.result.lesson.file.title)
    stop = told.stops[index].head
    return LinkView(f"{lesson}#{stop.id}", stop.heading)
