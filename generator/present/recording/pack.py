"""The recording pack of a lesson: its pages and its caption draft."""

from __future__ import annotations

from generator.compute.recorded import ChangedFigure, changed_figures
from generator.compute.result import LessonResult
from generator.compute.timeline import HOLD
from generator.model.moment import clock
from generator.model.pace import PACES
from generator.present.pages.in_lesson import PageInLesson
from generator.present.recording.captions import caption_draft
from generator.present.recording.cues import cue_sheet
from generator.present.recording.gone import gone_line
from generator.present.recording.script import script_stops
from generator.present.recording.shots import shot_list
from generator.present.recording.showing_name import showing_name
from generator.present.recording.slides.order import slides
from generator.present.recording.views import PackView, ScriptView, SlidesView
from generator.present.views.page import LinkView
from generator.present.words.say import Say

FOLDER = "recording"
"""Below the lesson's own folder on the site."""


def draft_name(result: LessonResult, say: Say) -> str:
    """Name of the caption draft."""
    return f"{result.lesson.id}.{say.language}.vtt"


def draft(result: LessonResult) -> str:
    """The caption draft as WebVTT."""
    return caption_draft(result.lesson)


def pack_view(told: PageInLesson) -> PackView:
    """The first page, with cue sheet and shot list."""
    result, say = told.result, told.surround.say
    pace = _pace(result)
    cues, total = cue_sheet(result, told.stops, pace, say)
    folder = f"{told.surround.folder}{result.lesson.id}/{FOLDER}"
    captions = LinkView(f"{folder}/{draft_name(result, say)}", say("recording_captions"))
    return PackView(
        page=told.page,
        title=result.lesson.file.title,
        back=told.links.lesson,
        links=(*told.links.filming[1:], captions),
        cues_says=say("recording_cues_says", pace=pace, hold=HOLD // 1000),
        cues=cues,
        total=total,
        shots=shot_list(result, say),
        again=_again(result, say),
    )


def script_view(told: PageInLesson) -> ScriptView:
    """The script, to be read while it scrolls."""
    return ScriptView(
        page=told.page,
        title=told.result.lesson.file.title,
        back=told.links.filming[0],
        pace=_pace(told.result),
        stops=script_stops(told.result, told.stops, told.surround.say),
    )


def slides_view(told: PageInLesson) -> SlidesView:
    """The slides, to be filmed from the screen."""
    return SlidesView(
        page=told.page,
        title=told.result.lesson.file.title,
        back=told.links.filming[0],
        slides=slides(told.result, told.surround.say),
    )


def _pace(result: LessonResult) -> int:
    return PACES[result.lesson.file.grades.band].spoken


def _again(result: LessonResult, say: Say) -> tuple[str, ...]:
    if result.lesson.recorded is None:
        return (say("recording_never", lesson=result.lesson.id),)
    changed = changed_figures(result)
    if not changed:
        return (say("recording_again_none"),)
    return tuple(_changed(one, result, say) for one in changed)


def _changed(changed: ChangedFigure, result: LessonResult, say: Say) -> str:
    filmed, now = changed.filmed, changed.now
    if now is None:
        return gone_line(changed, say)
    return say(
        "recording_again_says",
        from_=clock(filmed.start),
        to=clock(filmed.end),
        what=showing_name(now, result, say),
        filmed=say.number(filmed.value),
        now=say.number(now.figure.value),
    )
