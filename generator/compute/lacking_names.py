"""Names of the library that a lesson shows and its language lacks."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from generator.compute.holding import Holding
from generator.compute.result import LessonResult
from generator.model.food import NOT_LOOKED_AT
from generator.model.places import Path


@dataclass(frozen=True, slots=True)
class LackingName:
    """A name, or the texts of a move, that a language lacks."""

    language: str
    """Language tag of BCP 47."""
    at: Path
    """Where it has to be written: ``("foods", "apple-raw", "names")``, ``("moves", "march", "texts")``."""
    original: str
    """What stands there in the language the library always has."""


def lacking_names(result: LessonResult, language: str | None = None) -> tuple[LackingName, ...]:
    """What the library lacks for a lesson, each once, in the order of the lesson.

    Args:
        result: the lesson with its numbers.
        language: in which to look; the language the lesson is in where it is not given.
    """
    wanted = language or result.lesson.language
    found = [
        *(name for held in result.holdings for name in _of_food(held, wanted)),
        *_of_moves(result, wanted),
    ]
    return tuple(dict.fromkeys(found))


def _of_food(held: Holding, language: str) -> Iterator[LackingName]:
    """The food's name where a page shows it, and its portion's."""
    if held.food is None:
        return
    food = held.food.name(language)
    entry = held.food.entry
    # What can choke, and what nobody has looked at, care calls by its own name.
    shown = not held.item.name or entry.can_choke or entry.allergens == NOT_LOOKED_AT
    if food.foreign and shown:
        yield LackingName(language, ("foods", held.food.id, "names"), food.words)
    if held.serving and (portion := held.serving.portion) and portion.name(language).foreign:
        number = held.food.entry.portions.index(portion)
        at = ("foods", held.food.id, "portions", number, "names")
        yield LackingName(language, at, portion.name(language).words)


def _of_moves(result: LessonResult, language: str) -> Iterator[LackingName]:
    for movement in result.movements.values():
        for counted in movement.counts:
            text = counted.move.text(language)
            if text.foreign:
                at = ("moves", counted.move_id, "texts")
                yield LackingName(language, at, text.words.name)
