"""A quiz: no answer stands there twice."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.stops.quiz import QuizStop
from generator.problems import Problem
from generator.read.stops.kind import MadeStop, ReadKind, nothing


def _names(made: MadeStop[QuizStop]) -> Iterator[Problem]:
    for number, choice in enumerate(made.stop.choices):
        if choice in made.stop.choices[:number]:
            yield Problem(
                made.place("choices", number), f"`{choice}` is there twice", "take one out"
            )


KIND = ReadKind(stop=QuizStop, references=nothing, names=_names)
