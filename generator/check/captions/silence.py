"""Script that is spoken while no caption stands."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator

from generator.check.captions.on_air import OnAir, cues_on_air
from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.model.captions import CaptionFile, Cue, clock_ms
from generator.problems import Place, Problem, Weight

_FEWEST = 6
"""Words of the script that no cue has; fewer are a change of mind while filming. Ours, no source."""


@rule
def silence(result: LessonResult) -> Iterator[Problem]:
    """The longest stretch without a cue in a stop whose script has words that no cue of the stop has.

    In the lesson's own language the script is compared word by word. Captions in any other language
    are held against those: a long stretch without a cue where the others speak.
    """
    lesson = result.lesson
    own = lesson.captions.get(lesson.language)
    for file in lesson.captions.values():
        for part in cues_on_air(lesson.file.stops, file.cues):
            stretches = list(_stretches(part, result))
            for start, end in sorted(stretches, key=lambda both: both[0] - both[1])[:1]:
                if file is own:
                    yield from _against_script(result, file, part, (start, end))
                elif own and any(start <= cue.start_ms and cue.end_ms <= end for cue in own.cues):
                    what = f"there is no caption from {clock_ms(start)} to {clock_ms(end)}"
                    hint = f"the captions in `{own.path}` speak there"
                    yield Problem(_place(file, part, start), what, hint, Weight.QUESTION)


def _stretches(part: OnAir, result: LessonResult) -> Iterator[tuple[int, int]]:
    """Stretches of the stop without a cue that are longer than allowed, ms."""
    longest = result.lesson.caption_limits.silence * 1000
    before = part.start_ms
    for cue in part.cues:
        if cue.start_ms - before > longest:
            yield before, cue.start_ms
        before = max(before, cue.end_ms)
    if part.end_ms - before > longest:
        yield before, part.end_ms


def _against_script(
    result: LessonResult, file: CaptionFile, part: OnAir, stretch: tuple[int, int]
) -> Iterator[Problem]:
    say = result.lesson.file.stops[part.index].say
    missing = (_words(say or "") - _words(" ".join(cue.text for cue in part.cues))).total()
    if missing >= _FEWEST:
        start, end = map(clock_ms, stretch)
        what = f"there is no caption from {start} to {end}, and {missing} words of the script of `{result.lesson.stop_id(part.index)}` are in none"
        hint = "caption them, or take from `say:` what is not said"
        yield Problem(_place(file, part, stretch[0]), what, hint, Weight.QUESTION)


def _words(text: str) -> Counter[str]:
    return Counter(word.lower() for word in re.findall(r"\d+(?:[.,]\d+)*|[^\W_]+", text))


def _place(file: CaptionFile, part: OnAir, start: int) -> Place:
    """The last cue before the stretch."""
    before: list[Cue] = [cue for cue in file.cues if cue.end_ms <= max(start, part.start_ms)]
    return before[-1].place if before else Place(file.path)
