"""A number that changed after filming, set right beside the video and in its captions."""

from __future__ import annotations

import re
from collections.abc import Mapping

from generator.compute.recorded import ChangedFigure, changed_figures
from generator.compute.result import LessonResult
from generator.model.captions import CaptionLimits
from generator.present.recording.line_breaks import lines_of
from generator.present.recording.webvtt import webvtt_time
from generator.present.words.amounts import food_name
from generator.present.words.move_text import move_text
from generator.present.words.say import Say

_TIMES = re.compile(r"^(?:(\d+):)?(\d\d):(\d\d)\.(\d{3})\s+-->", re.MULTILINE)


def corrections(result: LessonResult, say: Say) -> dict[str, tuple[str, ...]]:
    """By stop: what the video says, and what it is now."""
    found: dict[str, tuple[str, ...]] = {}
    names = figure_names(result, say)
    for changed in _still_there(result):
        line = _sentence("correction", changed, names, say)
        found[changed.filmed.stop] = (*found.get(changed.filmed.stop, ()), line)
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
    names = figure_names(result, say)
    limits = result.lesson.caption_limits
    cues = [(int(one.filmed.start * 1000), _cue(one, names, limits, say)) for one in changed]
    return {
        name: _merged(recorded.captions[name], cues)
        for language, name in video.captions.items()
        if (language if language in languages else languages[0]) == say.language
        and name in recorded.captions
    }


def _still_there(result: LessonResult) -> tuple[ChangedFigure, ...]:
    """Changed numbers that the page still has; of one that is gone there is nothing to set right."""
    return tuple(one for one in changed_figures(result) if one.now is not None)


def _sentence(key: str, changed: ChangedFigure, names: Mapping[str, str], say: Say) -> str:
    filmed = changed.filmed
    return say(
        key,
        what=names.get(filmed.id, ""),
        filmed=say.number(filmed.value),
        now=say.number(changed.now or 0),
    )


def figure_names(result: LessonResult, say: Say) -> dict[str, str]:
    """What a number is about, by its address: a food, a move, or nothing."""
    foods = {
        f"{stop}.row-{number}.{side}": food_name(held, say)
        for stop, comparison in result.comparisons.items()
        for number, row in enumerate(comparison.rows, 1)
        for side, held in zip(("first", "second"), row.sides, strict=True)
    }
    eaten = {
        f"{stop}.food-{number}": food_name(held, say)
        for stop, day in result.days.items()
        for number, held in enumerate(day.eaten, 1)
    }
    moves = {
        f"{stop}.card-{number}.{what}": say(key, move=text.name)
        for stop, movement in result.movements.items()
        for number, counted in enumerate(movement.counts, 1)
        for text in [move_text(counted.move, say)]
        for what, key in (("count", "correction_count"), ("left-over", "correction_left_over"))
    }
    return {**foods, **eaten, **moves}


def _cue(changed: ChangedFigure, names: Mapping[str, str], limits: CaptionLimits, say: Say) -> str:
    start = int(changed.filmed.start * 1000)
    end = min(int(changed.filmed.end * 1000), start + int(limits.longest * 1000))
    sentence = _sentence("correction_caption", changed, names, say)
    text = "\n".join(lines_of(sentence.split(" "), limits))  # a no-break space breaks no line
    escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return f"{webvtt_time(start)} --> {webvtt_time(end)} line:0\n{escaped}"


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
