"""The recording pack of a lesson: its pages and its caption draft."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from generator.compute.recorded import ChangedFigure, changed_figures
from generator.compute.result import LessonResult
from generator.compute.timeline import HOLD
from generator.model.moment import clock
from generator.model.pace import PACES
from generator.present.pages.page import Surround
from generator.present.recording.captions import caption_draft
from generator.present.recording.corrections import figure_names
from generator.present.recording.cues import cue_sheet
from generator.present.recording.script import script_stops
from generator.present.recording.shots import shot_list
from generator.present.recording.slides.order import slides
from generator.present.recording.views import PackView, ScriptView, SlidesView
from generator.present.views.page import LinkView, PageView
from generator.present.views.stop import StopView
from generator.present.words.say import Say
from generator.present.words.stamp import print_stamp

FOLDER = "recording"
"""Below the lesson's own folder on the site."""


class PackPage(NamedTuple):
    """One page, not yet filled into its template."""

    name: str
    template: str
    view: PackView | ScriptView | SlidesView


def pack_pages(
    result: LessonResult, stops: Sequence[StopView], surround: Surround
) -> Iterator[PackPage]:
    """The first page with cue sheet and shot list, the script, and the slides."""
    yield PackPage("index.html", "recording/pack.html", _pack(result, stops, surround))
    yield PackPage("script.html", "recording/script.html", _script(result, stops, surround))
    yield PackPage("slides.html", "recording/slides.html", _slides(result, surround))


def draft_name(result: LessonResult, say: Say) -> str:
    """Name of the caption draft."""
    return f"{result.lesson.id}.{say.language}.vtt"


def draft(result: LessonResult) -> str:
    """The caption draft as WebVTT."""
    return caption_draft(result.lesson)


def _pack(result: LessonResult, stops: Sequence[StopView], surround: Surround) -> PackView:
    say, pace = surround.say, _pace(result)
    cues, total = cue_sheet(result, stops, pace, say)
    return PackView(
        page=_page("index.html", say("recording_title"), result, surround),
        title=result.lesson.file.title,
        back=LinkView("../index.html", say("back_to_lesson")),
        links=(
            LinkView("script.html", say("recording_script")),
            LinkView("slides.html", say("recording_slides")),
            LinkView(draft_name(result, say), say("recording_captions")),
        ),
        cues_says=say("recording_cues_says", pace=pace, hold=HOLD // 1000),
        cues=cues,
        total=total,
        shots=shot_list(result, say),
        again=_again(result, say),
        stamp=print_stamp(result),
    )


def _script(result: LessonResult, stops: Sequence[StopView], surround: Surround) -> ScriptView:
    say = surround.say
    return ScriptView(
        page=_page("script.html", say("recording_script"), result, surround),
        title=result.lesson.file.title,
        back=LinkView("index.html", say("recording_title")),
        pace=_pace(result),
        stops=script_stops(result, stops, say),
    )


def _slides(result: LessonResult, surround: Surround) -> SlidesView:
    say = surround.say
    return SlidesView(
        page=_page("slides.html", say("recording_slides"), result, surround),
        title=result.lesson.file.title,
        back=LinkView("index.html", say("recording_title")),
        slides=slides(result, say),
    )


def _page(name: str, title: str, result: LessonResult, surround: Surround) -> PageView:
    """Surroundings with the pack's own style and script, so that a family's page carries neither."""
    lesson = result.lesson
    page = surround.page(f"{lesson.id}/{FOLDER}/{name}", f"{title}: {lesson.file.title}")
    assets = f"{page.root}assets/"
    return replace(
        page,
        languages=(),
        stylesheet=f"{assets}recording.css",
        script=f"{assets}recording.js",
    )


def _pace(result: LessonResult) -> int:
    return PACES[result.lesson.file.grades.band].spoken


def _again(result: LessonResult, say: Say) -> tuple[str, ...]:
    if result.lesson.recorded is None:
        return (say("recording_never", lesson=result.lesson.id),)
    changed = changed_figures(result)
    if not changed:
        return (say("recording_again_none"),)
    names = figure_names(result, say)
    return tuple(_changed(one, names.get(one.filmed.id, one.filmed.id), say) for one in changed)


def _changed(changed: ChangedFigure, what: str, say: Say) -> str:
    filmed = changed.filmed
    return say(
        "recording_again_gone" if changed.now is None else "recording_again_says",
        from_=clock(filmed.start),
        to=clock(filmed.end),
        what=what,
        id=filmed.id,
        filmed=say.number(filmed.value),
        now=say.number(changed.now or 0),
    )
