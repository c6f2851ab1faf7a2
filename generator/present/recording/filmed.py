"""The numbers that a video of a lesson shows or says, each with its time."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal

from generator.compute.result import LessonResult
from generator.compute.trace import Figure, trace
from generator.model.moment import clock
from generator.model.recorded import FilmedFigure
from generator.present.recording.slides.order import slides
from generator.present.recording.slides.slide import MoveCount, RowOfTwo, Slide
from generator.present.recording.spoken import spoken
from generator.present.words.say import Say, digits

Times = tuple[int, int]
"""From and to, in ms."""

_LEFT_OVER = ".left-over"
_NUMBER = re.compile(r"\d[\d,]*(?:\.\d+)?")


def filmed_figures(result: LessonResult, say: Say) -> tuple[FilmedFigure, ...]:
    """What stands on the slides, and what the script says in digits at the number's own stop."""
    figures = {figure.id: figure for figure in trace(result)}
    times = {
        name: time
        for name, time in _on_slides(slides(result, say), result)
        if figures[name].value or not name.endswith(_LEFT_OVER)  # a slide leaves out a rest of 0
    }
    seen = [(figures[name].value, time) for name, time in times.items()]
    others = [figure for figure in figures.values() if figure.id not in times]
    times |= dict(_heard(others, seen, result))
    found = sorted((time, name) for name, time in times.items())
    return tuple(_filmed(figures[name], time) for time, name in found)


def recorded_text(lesson: str, on: str, figures: Iterable[FilmedFigure]) -> str:
    """The record as YAML.

    Args:
        lesson: id of the lesson.
        on: the day of filming, as ``2026-03-14``.
        figures: what was filmed.
    """
    head = [
        "# What the numbers were when this lesson was filmed. `python3 generator check` compares.",
        f"# After filming anew: python3 generator recorded {lesson}",
        f'filmed: "{on}"',
    ]
    lines = [
        f"  - {{id: {one.id}, value: {digits(one.value)}, unit: {one.unit}, stop: {one.stop}, "
        f'from: "{clock(one.start)}", to: "{clock(one.end)}"}}'
        for one in figures
    ]
    return "\n".join([*head, "figures:" if lines else "figures: []", *lines]) + "\n"


def _on_slides(shown: Iterable[Slide], result: LessonResult) -> Iterator[tuple[str, Times]]:
    """Figures of the rows and counts, by the place of their slide among those of its stop."""
    before: Counter[tuple[int, type]] = Counter()
    for slide in shown:
        kind = type(slide.content)
        before[slide.stop, kind] += 1
        base, number = result.lesson.stop_id(slide.stop), before[slide.stop, kind]
        times = slide.start, slide.start + slide.duration
        if kind is RowOfTwo:
            yield f"{base}.row-{number}.first", times
            yield f"{base}.row-{number}.second", times
        elif kind is MoveCount:
            yield f"{base}.card-{number}.count", times
            yield f"{base}.card-{number}.left-over", times


def _heard(
    figures: Iterable[Figure], seen: Sequence[tuple[Decimal, Times]], result: LessonResult
) -> Iterator[tuple[str, Times]]:
    """Figures whose value is said in digits at their stop, while no slide shows that number."""
    said: dict[str, dict[Decimal, Times]] = {}
    for cue in spoken(result.lesson):
        numbers = said.setdefault(result.lesson.stop_id(cue.index), {})
        for found in _NUMBER.findall(" ".join(cue.lines)):
            number = Decimal(found.replace(",", ""))
            on_slide = any(
                value == number and start < cue.end and cue.start < end
                for value, (start, end) in seen
            )
            if not on_slide:
                numbers.setdefault(number, (cue.start, cue.end))
    nothing: Mapping[Decimal, Times] = {}
    for figure in figures:
        times = said.get(figure.id.partition(".")[0], nothing).get(figure.value)
        if times and not figure.id.endswith(_LEFT_OVER):
            yield figure.id, times


def _filmed(figure: Figure, times: Times) -> FilmedFigure:
    """Whole seconds around the time: nobody cuts a film finer by reading a list."""
    start, end = (Decimal(time) / 1000 for time in times)
    return FilmedFigure.model_construct(
        id=figure.id,
        value=figure.value,
        unit=figure.unit,
        stop=figure.id.partition(".")[0],
        start=start.to_integral_value(ROUND_FLOOR),
        end=end.to_integral_value(ROUND_CEILING),
    )
