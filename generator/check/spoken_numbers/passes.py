"""Numbers that are none of the lesson's figures, and why each is let through."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from generator.language import Language
from generator.language.around_numbers import AroundNumbers
from generator.language.number import Number

_LARGEST_SMALL = 12
"""In words, up to here a number is mostly a word: *one of them*, *two lunches*, *three rows*."""
_ONCE_OR_TWICE = 3
"""In words, up to here *so many times* is how often something is done: *say it three times*."""
_FRACTION = re.compile(r"\d+/\d+|[¼-¾⅐-⅞]")
"""A part of one, written as such."""


def figures(text: str, found: Sequence[Number], language: Language) -> tuple[Number, ...]:
    """The numbers that must be figures of the lesson.

    Each of these rules lets one pass:

    1. *A name*: right behind row, step, page, grade, age and the like: ``row two``, ``grade 4``.
    2. *An order*: with its ending: ``2nd``, ``3.º``. Words like *second* are no numbers to begin with.
    3. *A time*: with minutes, years, o'clock behind it, written ``3:05``, or up to 24 or said as
       hours and minutes behind *at*: ``at two ten``.
    4. *A date*: beside a month, or 1900 to 2099 behind *in* or *since*.
    5. *A part*: ``two thirds``, ``3/4``, ``40 percent``; with a unit it is a figure: ``½ gram``.
    6. *A multiple*: ``three times as much``; the check of claims looks at it.
    7. *Counting aloud*: three or more in a row with one step between them: ``one, two, three``.
    8. *A small word*: up to twelve in words, *a hundred* or *a dozen*, unless a unit follows, or it
       ends what a food holds. *Nothing* is one too.
    9. *Something else*: followed by a word that is neither a unit nor a small word: ``two lunches``,
       ``1 cup``, ``350 steps``, ``165 °F``; unless that is a row.
    10. *Together with one that passed*: ``rows one and two``.
    11. *A bound*: ``within 100``.
    12. *One count*: the word for one before what a number of moves is said in.
    """
    if not found:
        return ()
    around = language.around
    aloud = _counted_aloud(text, found, around)
    kept: list[Number] = []
    previous: Number | None = None
    passed = False
    for number in found:
        joined = previous is not None and around.joined.fullmatch(text[previous.end : number.start])
        small = number.value <= _LARGEST_SMALL
        passed = (
            number in aloud or _passes(text, number, language) or bool(joined and passed and small)
        )
        if not passed:
            kept.append(number)
        previous = number
    return tuple(kept)


def _passes(text: str, number: Number, language: Language) -> bool:
    head, tail, around = text[: number.start], text[number.end :], language.around
    if number.measure:
        return False  # it says that something holds none of it
    return bool(
        around.labels_before.search(head)
        or around.ordinal_after.match(tail)
        or _time(number, head, tail, around)
        or _date(number, head, tail, around)
        or around.fraction_after.match(tail)
        or _part(number, head, tail, around)
        or around.multiple_after.match(tail)
        or _small_word(number, head, tail, around)
        or _something_else(number, tail, language)
        or language.said_of.bound_before.search(head)
        or (number.in_words and number.value == 1 and language.said_of.counts.match(tail))
    )


def _time(number: Number, head: str, tail: str, around: AroundNumbers) -> bool:
    written = re.match(r":\d\d", tail) or re.search(r"\d:$", head)
    has_unit = _has_unit(number, tail, around)
    hour = number.value <= 24 and around.time_before.search(head)
    clock = (
        number.in_words
        and 100 < number.value < 1260
        and number.value % 100 < 60
        and around.clock_before.search(head)
    )
    return bool(written or (not has_unit and (hour or clock)) or around.time_after.match(tail))


def _has_unit(number: Number, tail: str, around: AroundNumbers) -> bool:
    return bool(number.unit or around.unit_after.match(tail))


def _part(number: Number, head: str, tail: str, around: AroundNumbers) -> bool:
    """``3/4`` or ``½`` of something that has no unit; and a date that is written with strokes."""
    stroke = re.match(r"/\d", tail) or re.search(r"\d/$", head)
    held = around.holds_before.search(head) and _ends(tail)
    alone = _FRACTION.fullmatch(number.text) and not held
    return bool(stroke or (alone and not _has_unit(number, tail, around)))


def _ends(tail: str) -> bool:
    return re.match(r"\s*(?:[.,;:!?]|$)", tail) is not None


def _date(number: Number, head: str, tail: str, around: AroundNumbers) -> bool:
    day = number.value <= 31 and (
        around.month_before.search(head) or around.month_after.match(tail)
    )
    year = (
        1900 <= number.value <= 2099 and number.text.isdecimal() and around.year_before.search(head)
    )
    return bool((day or year) and not _has_unit(number, tail, around))


def _small_word(number: Number, head: str, tail: str, around: AroundNumbers) -> bool:
    if not number.in_words or (number.bare and number.value > _LARGEST_SMALL):
        return False
    if around.of_after.match(tail):
        return True
    if (not number.bare or number.value <= _ONCE_OR_TWICE) and around.repeats_after.match(tail):
        return True
    if not number.bare and around.given_after.match(tail) and around.begins.search(head):
        return False
    held = _ends(tail) and (
        around.holds_before.search(head) or (not number.bare and around.listed.search(head))
    )
    return not _has_unit(number, tail, around) and not held


def _something_else(number: Number, tail: str, language: Language) -> bool:
    around = language.around
    if _has_unit(number, tail, around) or language.said_of.row_after.match(tail):
        return False
    if re.match(r"\s*°", tail):
        return True
    if around.of_after.match(tail):
        return True
    word = re.match(r"\s+([^\W\d_]+)", tail)
    return (
        word is not None
        and word[1].lower() not in around.follows
        and not around.more_after.match(tail)
    )


def _counted_aloud(text: str, found: Sequence[Number], around: AroundNumbers) -> set[Number]:
    """Runs of three or more with one step between them, and nothing but marks or *and*."""
    runs: list[list[Number]] = []
    for number in found:
        run = runs[-1] if runs else []
        near = bool(run) and around.aloud.fullmatch(text[run[-1].end : number.start]) is not None
        if near and (len(run) == 1 or number.value - run[-1].value == run[1].value - run[0].value):
            run.append(number)
        else:
            runs.append([number])
    return {number for run in runs if len(run) > 2 and _steps(run) for number in run}


def _steps(run: Sequence[Number]) -> bool:
    steps: set[Decimal] = {later.value - earlier.value for earlier, later in pairwise(run)}
    return len(steps) == 1 and Decimal(0) not in steps
