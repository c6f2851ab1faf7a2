"""What is said in a video, to be read: the captions as whole sentences, under the stops they lead to."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import groupby

from generator.compute.result import LessonResult
from generator.compute.timeline import on_air, parts, seconds
from generator.model.captions import CaptionFile, Cue
from generator.model.moment import clock
from generator.present.pages.page import Surround
from generator.present.pages.video import shown_language
from generator.present.views.page import LinkView
from generator.present.views.stop import StopView
from generator.present.views.video import SaidView, TranscriptView

_ENDED = re.compile(r"[.?!…][\")»”’]*$")


def transcript_view(
    result: LessonResult, stops: tuple[StopView, ...], surround: Surround
) -> TranscriptView | None:
    """The page with all that is said; nothing where the lesson has no captions."""
    lesson, say = result.lesson, surround.say
    language = shown_language(lesson.captions, say.language)
    if language is None:
        return None
    title = say("transcript_title")
    return TranscriptView(
        page=surround.page(f"{lesson.id}/transcript.html", f"{title}: {lesson.file.title}"),
        title=lesson.file.title,
        back=LinkView("index.html", say("back_to_lesson")),
        language=language,
        parts=_parts(lesson.captions[language], result, stops),
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
    file: CaptionFile, result: LessonResult, stops: tuple[StopView, ...]
) -> tuple[tuple[LinkView, tuple[SaidView, ...]], ...]:
    """The sentences, under the stop that is on when they begin."""
    found = parts(result.lesson.file.stops)

    def chapter(said: tuple[int, str]) -> int | None:
        return on_air(found, said[0]).index if found else None

    return tuple(
        (
            _link(None if index is None else stops[index], result),
            tuple(SaidView(clock(seconds(start)), text) for start, text in group),
        )
        for index, group in groupby(sentences(file.cues), key=chapter)
    )


def _link(stop: StopView | None, result: LessonResult) -> LinkView:
    """To the stop; to the lesson where none of its stops has a time."""
    if stop is None:
        return LinkView("index.html", result.lesson.file.title)
    return LinkView(f"index.html#{stop.head.id}", stop.head.heading)
