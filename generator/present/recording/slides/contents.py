"""What the slides of a stop hold, each number from the same computation as the page."""

from __future__ import annotations

import re
from typing import assert_never

from generator.compute.result import Comparison, LessonResult, Movement
from generator.compute.result import MoveCount as CountedMove
from generator.model.measure import Measure
from generator.model.stops import Stop
from generator.model.stops.ask import AskStop
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop
from generator.model.stops.talk import TalkStop
from generator.model.stops.watch import WatchStop
from generator.present.pictures.figures import figure
from generator.present.recording.slides.slide import (
    Before,
    Content,
    Held,
    Line,
    MoveCount,
    Pause,
    Question,
    RowOfTwo,
)
from generator.present.recording.spoken import paragraphs
from generator.present.words.amounts import holding_view
from generator.present.words.move_text import move_text
from generator.present.words.say import Say

_MARKUP = re.compile(r"[*_`]+|\[([^\]]*)\]\([^)]*\)")
_INK, _PLUM = "#2A1A2C", "#6A1F4F"


def contents(index: int, result: LessonResult, say: Say) -> tuple[Content, ...]:
    """Slides of one stop without its pause; at least one."""
    stop = result.lesson.file.stops[index]
    heading = _heading(stop, say)
    match stop:
        case WatchStop():
            title = heading if index else plain(result.lesson.file.title)
            return tuple(
                Line(title, _last_sentence(part)) for part in paragraphs(stop.say or "")
            ) or (Line(title, ""),)
        case AskStop() | TalkStop():
            return (Question(heading, plain(stop.prompt)),)
        case DayStop():
            return (Question(heading, plain(stop.prompt or stop.person.name)),)
        case CompareStop():
            return _rows(heading, result.comparisons[stop.id], say)
        case MoveStop():
            return _moves(heading, result.movements[result.lesson.stop_id(index)], say)
        case _:
            assert_never(stop)


def pause(index: int, result: LessonResult, say: Say) -> Pause:
    """The slide at a stop's pause point."""
    stop = result.lesson.file.stops[index]
    match stop:
        case AskStop() | TalkStop():
            task = plain(stop.prompt)
        case DayStop():
            task = plain(stop.prompt or stop.person.name)
        case CompareStop():
            task = say("slide_task_compare")
        case MoveStop():
            task = say("slide_task_move")
        case WatchStop():
            task = ""
        case _:
            assert_never(stop)
    return Pause(_heading(stop, say), say("slide_pause"), task)


def plain(text: str) -> str:
    """A prompt without its Markdown marks, its apostrophes rounded."""
    return " ".join(_MARKUP.sub(lambda found: found[1] or "", text).replace("'", "’").split())


def _rows(heading: str, comparison: Comparison, say: Say) -> tuple[RowOfTwo, ...]:
    stop = comparison.stop
    rows = []
    for row in comparison.rows:
        views = [
            holding_view(held, side, stop.sides[side], stop.measure, say)
            for side, held in enumerate(row.sides)
        ]
        first, second = (
            Held(
                plain(view.side),
                plain(view.name),
                view.amount,
                view.value.text,
                view.unit,
                view.blocks,
            )
            for view in views
        )
        rows.append(RowOfTwo(heading, first, second, say("paper_how_much_more")))
    return tuple(rows)


def _moves(heading: str, movement: Movement, say: Say) -> tuple[Content, ...]:
    measure = movement.comparison.stop.measure
    checks = tuple(say(f"before_moving_{number}") for number in range(1, 5))
    return (
        Before(say("before_you_move"), checks),
        *(_move(heading, counted, measure, say) for counted in movement.counts),
    )


def _move(heading: str, counted: CountedMove, measure: Measure, say: Say) -> MoveCount:
    text = move_text(counted.move, say)
    left = counted.count.left_over
    return MoveCount(
        heading=heading,
        name=text.name,
        count=say.number(counted.count.whole),
        count_is=say("one_count_is", count_is=text.count_is),
        left_over=say("left_over", rest=say.quantity(left, measure)) if left else "",
        figures=tuple(_drawn(figure(pose)) for pose in counted.move.poses),
    )


def _drawn(svg: str) -> str:
    """A figure of the page as a picture of its own, with the colours the page's style gives it."""
    return svg.replace(
        "<svg ", f'<svg xmlns="http://www.w3.org/2000/svg" color="{_INK}" ', 1
    ).replace('class="figure-head"', f'color="{_PLUM}"')


def _heading(stop: Stop, say: Say) -> str:
    return plain(stop.title) if stop.title else say(f"stop_{stop.kind}")


def _last_sentence(paragraph: str) -> str:
    return plain(re.split(r"(?<=[.?!]) ", paragraph)[-1])
