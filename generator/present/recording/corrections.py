"""A number that changed after filming, set right beside the video and in its captions."""

from __future__ import annotations

import re

from generator.compute.recorded import ChangedFigure, changed_figures
from generator.compute.result import LessonResult
from generator.compute.showing import Showing
from generator.model.captions import CaptionLimits
from generator.model.figure import FigureKind
from generator.present.recording.line_breaks import lines_of
from generator.present.recording.showing_name import showing_name
from generator.present.recording.webvtt import webvtt_time
from generator.present.words.food_amount import amount_words
from generator.present.words.say import Say

_ON_PAGE = ("correction", "correction_amount")
_IN_CAPTIONS = ("correction_caption", "correction_caption_amount")
_TIMES = re.compile(r"^(?:(\d+):)?(\d\d):(\d\d)\.(\d{3})\s+-->", re.MULTILINE)


def corrections(result: LessonResult, say: Say) -> dict[str, tuple[str, ...]]:
    """By stop: what the video says, and what it is now."""
    found: dict[str, tuple[str, ...]] = {}
    for changed, now in _still_there(result):
        line = _sentence(_ON_PAGE, changed, now, result, say)
        found[now.stop] = (*found.get(now.stop, ()), line)
    return found


def corrected_captions(
    result: LessonResult, say: Say, languages: tuple[str, ...]
) -> dict[str, str]:
    """The caption files with corrections between their cues, by name; none while nothing changed.

    A correction stands at the top of the picture, so that it hides no caption.

    Args:
        result: the lesson in the language of ``say``.
        say: writes the corrections; only captions in its language are corrected.
        languages: of the site. Captions in a language the site does not have go with the first.
    """
    recorded, video = result.lesson.recorded, result.lesson.file.video
    changed = _still_there(result)
    if recorded is None or video is None or not changed:
        return {}
    cues = [(int(one.filmed.start * 1000), _cue(one, now, result, say)) for one, now in changed]
    return {
        name: _merged(recorded.captions[name], cues)
        for language, name in video.captions.items()
        if (language if language in languages else languages[0]) == say.language
        and name in recorded.captions
    }


def _still_there(result: LessonResult) -> tuple[tuple[ChangedFigure, Showing], ...]:
    """Changed numbers that the page still has; of one that is gone there is nothing to set right."""
    return tuple((one, one.now) for one in changed_figures(result) if one.now)


def _sentence(
    keys: tuple[str, str], changed: ChangedFigure, now: Showing, result: LessonResult, say: Say
) -> str:
    """A food of another amount than in the film is not the same number: both are told.

    Args:
        keys: of the sentence, and of the one for a food of another amount.
        changed: what was filmed.
        now: what it is today.
        result: the lesson of today, in the language of ``say``.
        say: writes it.
    """
    held = now.figure.foods[0] if now.figure.kind is FigureKind.HOLDS else None
    of_other = held is not None and changed.of_other_amount
    return say(
        keys[of_other],
        what=showing_name(now, result, say),
        amount=amount_words(held, say) if held else "",
        filmed=say.number(changed.filmed.value),
        now=say.number(now.figure.value),
    )


def _cue(changed: ChangedFigure, now: Showing, result: LessonResult, say: Say) -> str:
    limits = result.lesson.caption_limits
    start = int(changed.filmed.start * 1000)
    end = min(int(changed.filmed.end * 1000), start + int(limits.longest * 1000))
    sentence = _sentence(_IN_CAPTIONS, changed, now, result, say)
    text = "\n".join(_in_limits(sentence, limits))
    escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return f"{webvtt_time(start)} --> {webvtt_time(end)} line:0\n{escaped}"


def _in_limits(sentence: str, limits: CaptionLimits) -> tuple[str, ...]:
    """The lines of the site's own words where they fit, else broken anew."""
    lines = tuple(sentence.split("\n"))
    if len(lines) <= limits.lines and max(map(len, lines)) <= limits.line:
        return lines
    return lines_of(re.split("[ \n]+", sentence), limits)  # a no-break space breaks no line


def _merged(text: str, cues: list[tuple[int, str]]) -> str:
    """WebVTT with more cues, each before the first that begins later; the rest stays as it was."""
    blocks = re.split(r"\n{2,}", text.replace("\r\n", "\n").replace("\r", "\n").strip("\n"))
    rest = sorted(cues)
    merged: list[str] = []
    for block in blocks:
        start = _start(block)
        if start is not None:
            merged += [cue for time, cue in rest if time < start]
            rest = [(time, cue) for time, cue in rest if time >= start]
        merged.append(block)
    return "\n\n".join([*merged, *(cue for _, cue in rest)]) + "\n"


def _start(block: str) -> int | None:
    """Where a cue begins, in ms; nothing for a head, a note or a style."""
    if block.startswith(("NOTE", "STYLE", "REGION", "WEBVTT")):
        return None
    found = _TIMES.search(block)
    if not found:
        return None
    hours, minutes, seconds, rest = (int(part or 0) for part in found.groups())
    return ((hours * 60 + minutes) * 60 + seconds) * 1000 + rest
