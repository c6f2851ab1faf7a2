"""A number that changed after filming, set right beside the video and in its captions."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from decimal import Decimal

from generator.compute.recorded import ChangedFigure, changed_figures, heard_at
from generator.compute.result import LessonResult
from generator.compute.showing import Showing
from generator.model.captions import CaptionLimits
from generator.model.figure import FigureKind
from generator.model.recorded import FilmedFigure
from generator.present.recording.line_breaks import lines_of
from generator.present.recording.showing_name import showing_name
from generator.present.recording.webvtt import webvtt_time
from generator.present.words.food_amount import amount_words
from generator.present.words.say import Say

_ON_PAGE = ("correction", "correction_amount")
_IN_CAPTIONS = ("correction_caption", "correction_caption_amount")
_TIMES = re.compile(r"^(?:(\d+):)?(\d\d):(\d\d)\.(\d{3})\s+-->", re.MULTILINE)


def corrections(result: LessonResult, say: Say) -> dict[str, tuple[str, ...]]:
    """By stop: what the video says, and what it is now; last, which numbers of it are of before."""
    found: dict[str, list[str]] = {}
    for changed, now in _still_there(result):
        found.setdefault(now.stop, []).append(_sentence(_ON_PAGE, changed, now, result, say))
    gone: dict[str, list[Decimal]] = {}
    for changed in _gone(result):
        gone.setdefault(heard_at(changed.filmed, result), []).append(changed.filmed.value)
    for stop, values in gone.items():
        found.setdefault(stop, []).append(say("correction_gone", numbers=_listed(values, say)))
    return {stop: tuple(dict.fromkeys(lines)) for stop, lines in found.items()}


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
    if recorded is None or video is None:
        return {}
    cues = [*_cues(result, say)]
    return {
        name: _merged(recorded.captions[name], cues)
        for language, name in video.captions.items()
        if (language if language in languages else languages[0]) == say.language
        and name in recorded.captions
        and cues
    }


def _still_there(result: LessonResult) -> tuple[tuple[ChangedFigure, Showing], ...]:
    """Changed numbers that the lesson still has."""
    return tuple((one, one.now) for one in changed_figures(result) if one.now)


def _gone(result: LessonResult) -> tuple[ChangedFigure, ...]:
    """Numbers of the film that the lesson has no more; nothing of today stands for them."""
    return tuple(one for one in changed_figures(result) if one.now is None)


def _listed(values: Iterable[Decimal], say: Say) -> str:
    """Each value once, in the order of the film."""
    return say.listed(tuple(dict.fromkeys(map(say.number, values))))


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


def _cues(result: LessonResult, say: Say) -> Iterator[tuple[int, str]]:
    """A cue for each changed number, and one for all that are gone at the same time of the film."""
    for changed, now in _still_there(result):
        sentence = _sentence(_IN_CAPTIONS, changed, now, result, say)
        yield _cue(changed.filmed, sentence, result)
    gone: dict[Decimal, list[FilmedFigure]] = {}
    for changed in _gone(result):
        gone.setdefault(changed.filmed.start, []).append(changed.filmed)
    for filmed in gone.values():
        numbers = _listed((one.value for one in filmed), say)
        yield _cue(filmed[0], say("correction_gone_caption", numbers=numbers), result)


def _cue(filmed: FilmedFigure, sentence: str, result: LessonResult) -> tuple[int, str]:
    limits = result.lesson.caption_limits
    start = int(filmed.start * 1000)
    end = min(int(filmed.end * 1000), start + int(limits.longest * 1000))
    text = "\n".join(_in_limits(sentence, limits))
    escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return start, f"{webvtt_time(start)} --> {webvtt_time(end)} line:0\n{escaped}"


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
