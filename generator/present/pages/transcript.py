"""What is said in a video, to be read: the captions as whole sentences, under the stops they lead to."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from itertools import groupby

from generator.compute.result import LessonResult
from generator.model.captions import CaptionFile, Cue
from generator.model.moment import clock
from generator.present.pages.page import Surround
from generator.present.pages.video import chapters, shown_language
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
    """The sentences, under the chapter that has begun when they are said."""
    parts = chapters(result, stops)

    def chapter(said: tuple[int, str]) -> int:
        return max(sum(part.start * 1000 <= said[0] for part in parts) - 1, 0)

    return tuple(
        (
            LinkView(f"index.html{parts[number].href}", parts[number].label),
            tuple(SaidView(clock(Decimal(start) / 1000), text) for start, text in group),
        )
        for number, group in groupby(sentences(file.cues), key=chapter)
    )
