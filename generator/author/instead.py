"""What would have to give where no row has all that is wished."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal

from generator.compute.offers import Offer, offers
from generator.compute.pair_wishes import PairWishes, Wish, given_up
from generator.compute.pairing import pairs
from generator.model.library import Library


@dataclass(frozen=True, slots=True)
class Instead:
    """Wishes that give rows once they are given up, all others kept."""

    wishes: tuple[Wish, ...]
    """To be given up."""
    rows: int
    """How many there are then."""
    nearest: tuple[Decimal, ...]
    """The gaps nearest to the one that was wished, below it and above; none where it is kept."""


def instead(library: Library, wishes: PairWishes) -> tuple[Instead, ...]:
    """Each single wish that gives rows when it is given up, else each two of them; most rows first."""
    offered = offers(library.foods.values(), wishes.measure)
    for number in (1, 2):
        found = tuple(_instead(offered, wishes, number))
        if found:
            return tuple(sorted(found, key=lambda one: -one.rows))
    return ()


def instead_lines(ways: tuple[Instead, ...], wishes: PairWishes) -> Iterator[str]:
    """Each way out, with how many rows it gives."""
    if not ways:
        yield "No row has all of this, nor when any two of the wishes are given up."
        return
    two = len(ways[0].wishes) > 1
    yield (
        "No row has all of this, and no single wish is enough to give up. Give up two:"
        if two
        else "No row has all of this. Give up one:"
    )
    for way in ways:
        options = " and ".join(f"--{wish}" for wish in way.wishes)
        yield f"  {options}: {way.rows:,} row{'s'[: way.rows != 1]}{_nearest(way, wishes)}"


def digits(number: Decimal) -> str:
    """Without needless zeros: ``6``, not ``6.0``."""
    return f"{number.normalize():f}"


def _instead(offered: tuple[Offer, ...], wishes: PairWishes, number: int) -> Iterator[Instead]:
    for names, rest in given_up(wishes, number):
        gaps = [pair.gap.size for pair in pairs(offered, rest)]
        if gaps:
            near = tuple(_around(wishes.gap, gaps)) if Wish.GAP in names and wishes.gap else ()
            yield Instead(names, len(gaps), near)


def _around(wished: tuple[Decimal, Decimal], gaps: Iterable[Decimal]) -> Iterator[Decimal]:
    """The largest gap below what is wished and the smallest above; inside of it where others give."""
    least, most = wished
    listed = set(gaps)
    if below := [gap for gap in listed if gap < least]:
        yield max(below)
    if above := [gap for gap in listed if gap > most]:
        yield min(above)


def _nearest(way: Instead, wishes: PairWishes) -> str:
    if not way.nearest:
        return ""
    gaps = " and ".join(map(digits, way.nearest))
    are = "gaps are" if len(way.nearest) > 1 else "gap is"
    return f"; the nearest {are} {gaps} {wishes.measure.unit}"
