"""Answers that count: the one list of every answer of a lesson that its page can check.

Gaps and counts that the learner is asked for, totals, questions with an answer, the parting question
and the way a day leans. No estimate is among them, no guess before a change, no open question, and no
question that is asked again later: what is answered there is neither right nor wrong yet.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from generator.compute.answers import PARTING
from generator.compute.counted import AnswerKind, CountedAnswer
from generator.compute.result import LessonResult, NoAnswer
from generator.compute.stops.kinds import KINDS
from generator.model.figure import FigureKind


@dataclass(frozen=True, slots=True)
class AskedTwice:
    """A question that is asked before and after."""

    before: str
    """Id of the stop that asks first; the pair is called by it."""
    after: str
    """Id of the stop that asks again."""


def answers_that_count(result: LessonResult) -> tuple[CountedAnswer, ...]:
    """In the order of the lesson page: by stop, and the parting question last."""
    return tuple(_answers(result))


def asked_twice(result: LessonResult) -> tuple[AskedTwice, ...]:
    """The questions that are asked before and after, in the order in which they are asked again."""
    return tuple(AskedTwice(*pair) for pair in result.lesson.asked_again.items())


def stops_of(result: LessonResult) -> tuple[str, ...]:
    """What a learner can be done with: the ids of all stops, and the parting question."""
    parting = (PARTING,) if result.lesson.file.parting else ()
    return (*(ids.stop for ids in result.lesson.ids), *parting)


def _answers(result: LessonResult) -> Iterator[CountedAnswer]:
    lesson = result.lesson
    choices = {
        ids.stop: stop.right_choice
        for stop, ids in zip(lesson.file.stops, lesson.ids, strict=True)
        if stop.right_choice is not None
    }
    for stop, ids in zip(lesson.file.stops, lesson.ids, strict=True):
        if ids.stop in lesson.asked_again:
            continue
        if stop.kind in KINDS:
            yield from KINDS[stop.kind].counted(ids.stop, result.worked[ids.stop])
        yield from _question(ids.stop, stop.repeats or ids.stop, choices, result)
    if lesson.file.parting:
        yield from _question(PARTING, PARTING, choices, result)


def _question(
    stop: str, asks: str, choices: dict[str, int], result: LessonResult
) -> Iterator[CountedAnswer]:
    """The answer at a stop to the question that another one, or itself, asks first."""
    answer = result.answers.get(asks)
    name = f"{stop}.{FigureKind.ANSWER}"
    if asks in choices:
        yield CountedAnswer(name, stop, AnswerKind.QUESTION, str(choices[asks]))
    elif answer is not None and not isinstance(answer, NoAnswer):
        yield CountedAnswer(name, stop, AnswerKind.QUESTION, str(answer.value))
