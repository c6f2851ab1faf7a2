"""Proposed rows in words: ready to paste, and why each fits."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from generator.author.instead import digits, instead, instead_lines
from generator.author.pair_wishes import Typed, read_wishes
from generator.author.recorded_text import yaml_text
from generator.check.caps import AT_ONE_STOP
from generator.compute.offers import left_out, offers
from generator.compute.pair_wishes import PairWishes
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
        ways = instead(library, wishes)
        return "\n".join([*instead_lines(ways, wishes), *_left_out(library)])
    lines = [line for pair in chosen for line in row_lines(pair, library, wishes)]
    shown = f"{len(chosen)} of {number:,} rows" if number > len(chosen) else f"{number:,} rows"
    told = f"{shown} in {wishes.measure}, for grades {wishes.grades}."
    return "\n".join([*lines, "", told, *_remarks(library, wishes)])


def proposed(library: Library, wishes: PairWishes, rows: int) -> tuple[tuple[Pair, ...], int]:
    """The best rows, and how many there are in all."""
    found = tuple(pairs(offers(library.foods.values(), wishes.measure), wishes))
    return best(found, rows, wishes.wanted), len(found)


def _remarks(library: Library, wishes: PairWishes) -> Iterator[str]:
    """What else there is to know: how the rows are ranked, what a stop takes, what was left out."""
    yield RANKING
    if wishes.per and wishes.grades:
        most = AT_ONE_STOP[wishes.grades.band]
        yield f"All rows of one stop together may be counted {most} times for these grades."
    yield from _left_out(library)


def _left_out(library: Library) -> Iterator[str]:
    """How many foods stand in no row, whatever is wished."""
    if number := len(left_out(library.foods.values())):
        why = "raw and eaten only cooked, or never looked at for allergens"
        yield f"Left out: {number} food{'s'[: number != 1]}, {why}."


def row_lines(pair: Pair, library: Library, wishes: PairWishes) -> tuple[str, str]:
    """Why a row fits, as a comment, and the row as a lesson file has it."""
    foods = ", ".join(
        f"{{food: {side.food.id}, amount: {yaml_text(side.amount)}}}" for side in pair.sides
    )
    why = "; ".join(_why(pair, library, wishes))
    return f"{_INDENT}# {why}", f"{_INDENT}- [{foods}]"


def _why(pair: Pair, library: Library, wishes: PairWishes) -> Iterator[str]:
    larger, smaller, gap = map(digits, (pair.gap.larger, pair.gap.smaller, pair.gap.size))
    yield f"{larger} − {smaller} = {gap}: {_TRADES[pair.trading]}"
    if pair.count:
        left = pair.count.left_over
        over = f"{digits(left)} left over" if left else "nothing left over"
        yield f"{gap} ÷ {digits(pair.count.per)} = {pair.count.whole}, {over}"
        if wishes.grades:
            yield f"within the caps of {_moves(library, pair.count.whole, wishes.grades)}"
    first, second = (side.food.entry.group for side in pair.sides)
    yield f"{first} beside {second}" if first != second else f"both {first}"


def _moves(library: Library, count: int, grades: Grades) -> str:
    """Moves that may be done so often: ``march, side-step and 12 more``."""
    fit = [name for name, move in library.moves.items() if move.caps.for_band(grades.band) >= count]
    more = len(fit) - _NAMED
    return ", ".join(fit[:_NAMED]) + (f" and {more} more" if more > 0 else "")
