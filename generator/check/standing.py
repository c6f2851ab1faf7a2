"""What of a lesson old links and printed sheets lead to, as it stands today."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from generator.model.lesson import Lesson
from generator.problems import Place


@dataclass(frozen=True, slots=True)
class StandingStop:
    """One stop of a lesson."""

    id: str
    """Its address on the page."""
    formerly: tuple[str, ...]
    """Addresses it had before."""
    place: Place
    """Where it stands in the lesson file."""
    titles: Mapping[str, str]
    """By language, its title as it is written; none where its kind's own word serves."""


@dataclass(frozen=True, slots=True)
class Standing:
    """One lesson."""

    folder: str
    """Its name, and its address on the site."""
    formerly: tuple[str, ...]
    """Names its folder had before."""
    place: Place
    """Where its title stands."""
    titles: Mapping[str, str]
    """By each language it has."""
    stops: tuple[StandingStop, ...]
    """In the order of the page."""


def standing_of(lessons: Iterable[Lesson]) -> Standing:
    """A lesson in all its languages.

    Args:
        lessons: the same one in each, its own language first.
    """
    every = tuple(lessons)
    own = every[0]
    return Standing(
        folder=own.id,
        formerly=own.file.formerly,
        place=own.places.at("title"),
        titles={one.language: one.file.title for one in every},
        stops=tuple(
            StandingStop(
                id=own.stop_id(index),
                formerly=stop.formerly,
                place=own.places.at("stops", index),
                titles={
                    one.language: title
                    for one in every
                    if (title := one.file.stops[index].title) is not None
                },
            )
            for index, stop in enumerate(own.file.stops)
        ),
    )
