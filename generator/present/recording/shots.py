"""The shot list: the foods of each stop with their amounts, and what a move needs."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import assert_never

from generator.compute.result import Holding, LessonResult
from generator.model.move import Move
from generator.model.pose import Hold, Support
from generator.model.stops.ask import AskStop
from generator.model.stops.compare import CompareStop
from generator.model.stops.day import DayStop
from generator.model.stops.move import MoveStop
from generator.model.stops.talk import TalkStop
from generator.model.stops.watch import WatchStop
from generator.present.recording.views import ShotView
from generator.present.views.stop import StopView
from generator.present.words.amounts import amount_words, food_name, weight
from generator.present.words.say import Say


def shot_list(result: LessonResult, stops: Sequence[StopView], say: Say) -> tuple[ShotView, ...]:
    """What to have ready, by stop; stops that need nothing are left out."""
    shots = (
        ShotView(stops[index].head.heading, tuple(on_the_table(index, result, say)))
        for index in range(len(stops))
    )
    needed = result.lesson.file.you_need
    learner = (ShotView(say("recording_you_need"), needed),) if needed else ()
    return (*(shot for shot in shots if shot.things), *learner)


def on_the_table(index: int, result: LessonResult, say: Say) -> Iterator[str]:
    """Foods, or what the moves need, at one stop."""
    stop = result.lesson.file.stops[index]
    match stop:
        case CompareStop():
            for row in result.comparisons[stop.id].rows:
                yield from (_food(held, say) for held in row.sides)
        case DayStop():
            day = result.days[result.lesson.stop_id(index)]
            yield from (_food(held, say) for held in day.eaten)
        case MoveStop():
            counts = result.movements[result.lesson.stop_id(index)].counts
            yield from _props([counted.move for counted in counts], say)
        case WatchStop() | AskStop() | TalkStop():
            return
        case _:
            assert_never(stop)


def _food(held: Holding, say: Say) -> str:
    amount, name, grams = amount_words(held, say), food_name(held, say), weight(held, say)
    if grams and not amount.endswith(" g"):
        return say("recording_food_weighed", amount=amount, name=name, grams=grams)
    return say("recording_food", amount=amount, name=name) if amount else name


def _props(moves: Sequence[Move], say: Say) -> Iterator[str]:
    """A chair for the seated versions, and what hands and back need."""
    poses = [pose for move in moves for pose in (*move.poses, *move.seated_poses)]
    if any(pose.hold is Hold.BOTTLES for pose in poses):
        yield say("recording_bottles")
    if any(pose.support in {Support.CHAIR, Support.CHAIR_BEHIND} for pose in poses):
        yield say("recording_chair")
    if any(pose.support is Support.WALL for pose in poses):
        yield say("recording_wall")
