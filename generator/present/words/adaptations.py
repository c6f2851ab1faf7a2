"""How a lesson fits every child: the same for all lessons, and with this one's own rows and foods."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.open_task import open_task
from generator.compute.result import LessonResult
from generator.present.words.amounts import food_name
from generator.present.words.say import Say


def adaptations(result: LessonResult, say: Say) -> tuple[str, ...]:
    """One sentence or two a line."""
    return (
        say("adapt_seated"),
        say("adapt_space"),
        *_smaller(result, say),
        *_larger(result, say),
        say("adapt_language"),
        say("adapt_appetite"),
    )


def _smaller(result: LessonResult, say: Say) -> Iterator[str]:
    """The row with the smallest numbers of each comparison, but for one that leaves nothing to find."""
    for comparison in result.comparisons.values():
        rows = [(row.gap, at) for at, row in enumerate(comparison.rows, 1)]
        gap, number = min(
            rows, key=lambda one: (not one[0].size, not one[0].smaller, one[0].larger)
        )
        yield say(
            "adapt_smaller",
            heading=comparison.stop.title or say("stop_compare"),
            row=say.number(number),
            larger=say.number(gap.larger),
            smaller=say.number(gap.smaller),
        )


def _larger(result: LessonResult, say: Say) -> Iterator[str]:
    if result.comparisons:
        yield say("adapt_larger")
    for comparison in result.comparisons.values():
        if task := open_task(comparison):
            first, second = (say.inside(food_name(held, say)) for held in task.pair)
            gap = say.quantity(task.gap, comparison.stop.measure)
            yield say("adapt_open", gap=gap, first=first, second=second)
