"""What the lists of lessons make of all lessons together: what tells two apart, and which comes first."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from generator.problems import Place, Problem, Weight


@dataclass(frozen=True, slots=True)
class Listed:
    """What the lists ask of one lesson."""

    title: str
    """In its own language."""
    title_at: Place
    """Where it stands."""
    order: int | None
    """Its place in the lists, where it has one."""
    order_at: Place
    """Where that stands."""
    folder: str = ""
    """Its name today."""
    formerly: tuple[tuple[str, Place], ...] = ()
    """Names its folder had before, and where each is listed."""


def listed_apart(lessons: Iterable[Listed]) -> Iterator[Problem]:
    """A question for each lesson with the title, or with the place, of one before it.

    Two lessons of one title no list can tell apart: often a folder that was copied.

    Args:
        lessons: every lesson, in the order of their folders.
    """
    titles: dict[str, Place] = {}
    orders: dict[int, Place] = {}
    for one in lessons:
        title = " ".join(one.title.casefold().split())
        first = titles.setdefault(title, one.title_at)
        if first is not one.title_at:
            what = f"this lesson and that of {first.path} have one title"
            hint = "give one of them another, by which a family can tell them apart"
            yield Problem(one.title_at, what, hint, Weight.QUESTION)
        if one.order is None:
            continue
        first = orders.setdefault(one.order, one.order_at)
        if first is not one.order_at:
            what = (
                f"this lesson and that of {first.path}:{first.line} both say `order: {one.order}`"
            )
            hint = "give one of them another number; until then the names of their folders decide"
            yield Problem(one.order_at, what, hint, Weight.QUESTION)
