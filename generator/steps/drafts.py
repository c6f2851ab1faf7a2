"""What is told of lessons that are drafts: that they stay at home, and what is wrong with them so far."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace

from generator.problems import Place, Problem, Weight


def drafts_told(drafts: Mapping[str, Place]) -> Iterator[Problem]:
    """One line for each lesson that is not published.

    Args:
        drafts: by folder of the lesson, where it says that it is a draft.
    """
    for place in drafts.values():
        what, hint = (
            "this lesson is a draft and is not published",
            "take this line out when it is ready",
        )
        yield Problem(place, what, hint, Weight.DRAFT)


def of_draft(problems: Iterable[Problem]) -> Iterator[Problem]:
    """What is wrong with a draft, as something that stops nobody."""
    return (replace(problem, weight=Weight.DRAFT) for problem in problems)
