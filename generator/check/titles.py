"""Two lessons of one title, which no list can tell apart: often a folder that was copied."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from generator.problems import Place, Problem, Weight


def titles_apart(titles: Iterable[tuple[str, Place]]) -> Iterator[Problem]:
    """A question for each lesson with the title of one before it.

    Args:
        titles: of every lesson, with its place, in the order of their folders.
    """
    seen: dict[str, Place] = {}
    for title, place in titles:
        first = seen.setdefault(" ".join(title.casefold().split()), place)
        if first is not place:
            what = f"this lesson and that of {first.path} have one title"
            hint = "give one of them another, by which a family can tell them apart"
            yield Problem(place, what, hint, Weight.QUESTION)
