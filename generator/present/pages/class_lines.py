"""What a lesson needs in a class of many: materials reckoned from it, groups, room, and two halves."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from generator.compute.in_class import CLASS, GROUPS, blocks_for_a_group, first_half
from generator.compute.result import LessonResult
from generator.present.words.say import Say

_ON_A_SHEET = 4
"""Movement cards."""


def class_lines(
    result: LessonResult, headings: Sequence[str], minutes: Sequence[int], say: Say
) -> tuple[str, ...]:
    """One sentence or two a line.

    Args:
        result: the lesson worked out.
        headings: of its plan.
        minutes: of each line of it.
        say: the words of the page.
    """
    return tuple(_lines(result, headings, minutes, say))


def _lines(
    result: LessonResult, headings: Sequence[str], minutes: Sequence[int], say: Say
) -> Iterator[str]:
    yield say("class_groups", groups=say.number(GROUPS), pairs=say.number(GROUPS - 1))
    yield say("class_worksheets", children=say.number(CLASS))
    cards = len(result.moved)
    if cards:
        sheets = -(-cards // _ON_A_SHEET)
        yield say(
            "class_cards", n=cards, cards=say.number(cards), sheets=say.number(sheets * GROUPS)
        )
    if blocks := blocks_for_a_group(result):
        hundreds, tens, ones = map(say.number, (blocks.hundreds, blocks.tens, blocks.ones))
        yield say("class_blocks", hundreds=hundreds, tens=tens, ones=ones)
    if cards:
        yield say("class_room")
    if first := first_half(minutes):
        yield say(
            "class_two_days",
            heading=headings[first],
            first=say.number(sum(minutes[:first])),
            second=say.number(sum(minutes[first:])),
        )
