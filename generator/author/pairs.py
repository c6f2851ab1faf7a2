"""Proposed rows in words: ready to paste, why each fits, and what an impossible wish would have to give."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path

from generator.author.pair_wishes import Typed, read_wishes
from generator.author.recorded_text import yaml_text
from generator.check.caps import AT_ONE_STOP
from generator.compute.offers import Offer, left_out, offers
from generator.compute.pair_wishes import PairWishes, Wish, given_up
from generator.compute.pairing import Pair, best, pairs
from generator.compute.trading import Trading
from generator.model.grades import Grades
from generator.model.library import Library
from generator.read.library import read_library

RANKING = (
    "Best first by our own order, no source: foods whose short names come back in other names, "
    "a food's first portion, two groups rather than one, no drink beside a dish."
)
_INDENT = " " * 8
"""Where the rows of a comparison stand in a lesson file."""
_NAMED = 2
"""Moves that are named; of more, their number says enough."""
_TRADES = {
    Trading.NONE: "no trading",
    Trading.TENS: "with trading",
    Trading.ZERO: "with trading across a zero",
}


@dataclass(frozen=True, slots=True)
class Instead:
    """What gives rows where all wishes together give none."""

    wishes: tuple[Wish, ...]
    """To be given up."""
    rows: int
    """How many there are then."""
    gaps: tuple[str, str]
    """The smallest and the largest gap among them."""


def pair_text(root: Path, typed: Typed, rows: int) -> str:
    """Rows that have what was typed, or what would have to give; lines to show.

    Raises:
        LessonError: as ``read_library``.
        WishError: what was typed cannot be read.
    """
    library = read_library(root)
    wishes = read_wishes(library, typed)
    chosen, number = proposed(library, wishes, rows)
    if not chosen:
        return "\n".join(_instead_lines(instead(library, wishes), wishes))
    lines = [line for pair in chosen for line in row_lines(pair, library, wishes)]
    shown = f"{len(chosen)} of {number:,} rows" if number > len(chosen) else f"{number:,} rows"
    told = f"{shown} in {wishes.measure}, for grades {wishes.grades}."
    return "\n".join([*lines, "", told, *_remarks(library, wishes)])


def proposed(library: Library, wishes: PairWishes, rows: int) -> tuple[tuple[Pair, ...], int]:
    """The best rows, and how many there are in all."""
    found = tuple(pairs(offers(library.foods.values(), wishes.measure), wishes))
    return best(found, rows, wishes.wanted), len(found)


def instead(library: Library, wishes: PairWishes) -> tuple[Instead, ...]:
    """What would have to give: each single wish that then gives rows, else each two of them."""
    offered = offers(library.foods.values(), wishes.measure)
    for number in (1, 2):
        found = tuple(_instead(offered, wishes, number))
        if found:
            return tuple(sorted(found, key=lambda one: -one.rows))
    return ()


def _instead(offered: tuple[Offer, ...], wishes: PairWishes, number: int) -> Iterator[Instead]:
    for names, rest in given_up(wishes, number):
        gaps = [pair.gap.size for pair in pairs(offered, rest)]
        if gaps:
            yield Instead(names, len(gaps), (_digits(min(gaps)), _digits(max(gaps))))


def _remarks(library: Library, wishes: PairWishes) -> Iterator[str]:
    """What else there is to know: how the rows are ranked, what a stop takes, what was left out."""
    yield RANKING
    if wishes.per and wishes.grades:
        most = AT_ONE_STOP[wishes.grades.band]
        yield f"All rows of one stop together may be counted {most} times for these grades."
    if out := len(left_out(library.foods.values())):
        yield (
            f"Left out: {out} food{'s'[: out != 1]}, raw and eaten only cooked, or never looked at for allergens."
        )


def _instead_lines(ways: tuple[Instead, ...], wishes: PairWishes) -> Iterator[str]:
    """Each way out with how many rows it gives."""
    if not ways:
        yield "No row has all of this, nor when two of the wishes are given up."
        return
    one = len(ways[0].wishes) == 1
    what = "one of these wishes" if one else "two wishes, for no single one is enough"
    yield f"No row has all of this. Give up {what}:"
    for way in ways:
        options = " and ".join(f"--{wish}" for wish in way.wishes)
        least, most = way.gaps
        gaps = f", with gaps of {least} to {most} {wishes.measure.unit}"
        count = f"{way.rows:,} row{'s'[: way.rows != 1]}"
        yield f"  without {options}: {count}{gaps if Wish.GAP in way.wishes else ''}"


def row_lines(pair: Pair, library: Library, wishes: PairWishes) -> tuple[str, str]:
    """Why a row fits, as a comment, and the row as a lesson file has it."""
    foods = ", ".join(
        f"{{food: {side.food.id}, amount: {yaml_text(side.amount)}}}" for side in pair.sides
    )
    why = "; ".join(_why(pair, library, wishes))
    return f"{_INDENT}# {why}", f"{_INDENT}- [{foods}]"


def _why(pair: Pair, library: Library, wishes: PairWishes) -> Iterator[str]:
    larger, smaller, gap = map(_digits, (pair.gap.larger, pair.gap.smaller, pair.gap.size))
    yield f"{larger} − {smaller} = {gap}: {_TRADES[pair.trading]}"
    if pair.count:
        left = pair.count.left_over
        over = f"{_digits(left)} left over" if left else "nothing left over"
        yield f"{gap} ÷ {_digits(pair.count.per)} = {pair.count.whole}, {over}"
        if wishes.grades:
            yield f"within the caps of {_moves(library, pair.count.whole, wishes.grades)}"
    first, second = (side.food.entry.group for side in pair.sides)
    yield f"{first} beside {second}" if first != second else f"both {first}"


def _moves(library: Library, count: int, grades: Grades) -> str:
    """Moves that may be done so often: ``march, side-step and 12 more``."""
    fit = [name for name, move in library.moves.items() if move.caps.for_band(grades.band) >= count]
    more = len(fit) - _NAMED
    return ", ".join(fit[:_NAMED]) + (f" and {more} more" if more > 0 else "")


def _digits(number: Decimal) -> str:
    """Without needless zeros: ``6``, not ``6.0``."""
    return f"{number.normalize():f}"
