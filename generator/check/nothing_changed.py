"""A change that puts a food in the place of itself."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.changed import WhatIf
from generator.compute.result import LessonResult
from generator.problems import Problem, Weight


@rule
def something_changed(result: LessonResult) -> Iterator[Problem]:
    """A question where a change has no effect at all.

    A food for another that holds as much is a change to look at, for *the same* is one of the four
    guesses. Where no change of a stop moves the gap there is nothing to find, which is asked too.
    """
    worked = result.of(WhatIf)
    for index, ids in enumerate(result.lesson.ids):
        if what_if := worked.get(ids.stop):
            yield from _questions(result, index, what_if)


def _questions(result: LessonResult, index: int, worked: WhatIf) -> Iterator[Problem]:
    places = result.lesson.places
    path = ("stops", index, worked.stop.kind, "changes")
    for number, change in enumerate(worked.changes):
        old = worked.old(change)
        if [(old.id, old.serving, old.shown)] == [
            (held.id, held.serving, held.shown) for held in change.new
        ]:
            what = f"change {number + 1} puts the same food there in the same amount"
            hint = "choose another food or another amount"
            yield Problem(places.at(*path, number), what, hint, Weight.QUESTION)
    was = worked.comparison.total
    if all(one.total.first - one.total.second == was.first - was.second for one in worked.changes):
        what = f"none of these changes moves the gap; it stays {was.size} {worked.measure.unit}"
        hint = "let at least one of them bring a food that holds more or less"
        yield Problem(places.at(*path), what, hint, Weight.QUESTION)
