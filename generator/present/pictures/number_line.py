"""Counting up from the smaller to the larger number of a row, drawn as hops on a number line to scale."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from itertools import accumulate, pairwise
from math import ceil

from markupsafe import Markup

from generator.compute.count_up import Hop, count_up
from generator.compute.gap import Gap
from generator.compute.rounding import whole
from generator.present.words.say import Say

_END = 30
"""Units from an end of the line to the edge of the picture: room for half of a long number."""
_LONGEST = (190, 150, 130, 110, 95, 80, 66)
"""Units of the longest hop that is drawn to scale, and of one with a break; less where there are many."""
_NARROWEST, _WIDEST = 240, 390
"""Units of the whole picture, so that its numbers are neither huge nor too small on a small phone."""
_SIGN, _BETWEEN = 10, 8
"""Units of one sign of a number, and between two numbers."""
_BASE = 58
"""Where the line lies, in units from the top."""


@dataclass(frozen=True, slots=True)
class _Drawn:
    """A hop in the picture."""

    hop: Hop
    width: int
    broken: bool
    """Whether it is longer than drawn, and the line has a break in it."""


def number_line(gap: Gap, say: Say, *, sized: bool = True) -> Markup:
    """The picture of a gap, or nothing where both sides hold the same.

    Hops without a break are to one scale, the largest at which the numbers of the smallest have
    room; one that would be too long for the picture has a break in its line.

    Args:
        gap: from its smaller to its larger number.
        say: the words of the page.
        sized: whether each hop says how long it is.
    """
    hops = count_up(gap.smaller, gap.larger)
    if not hops:
        return Markup("")
    drawn = _drawn(hops, say)
    places = list(accumulate((one.width for one in drawn), initial=_END))
    width = places[-1] + _END
    picture = (
        f'<svg class="line" viewBox="0 0 {width} 84" role="img" aria-label="{_says(gap, drawn, say, sized=sized)}">'
        f'<path d="{_line(gap, drawn, places, width)}{_ticks(places)}"/>'
        f'<path d="{_arcs(places)}"/>{_numbers(hops, places, say, sized=sized)}</svg>'
    )
    return Markup(picture)  # noqa: S704  # made of numbers, and of a sentence without < or quotes


def _drawn(hops: tuple[Hop, ...], say: Say) -> tuple[_Drawn, ...]:
    scale = max(_scales(hops, say))
    least = min(hop.size for hop in hops) * scale  # at least one hop is to scale
    for longest in (max(one, ceil(least)) for one in _LONGEST):
        drawn = tuple(
            _Drawn(hop, max(longest, ceil(_room(hop.start, hop.end, say))), broken=True)
            if hop.size * scale > longest
            else _Drawn(hop, whole(Fraction(hop.size * scale)), broken=False)
            for hop in hops
        )
        if sum(one.width for one in drawn) + 2 * _END <= _WIDEST:
            break
    return drawn


def _scales(hops: tuple[Hop, ...], say: Say) -> Iterator[Decimal]:
    """Units of the picture for one of the gap, at which the numbers below, and those above, do not touch."""
    yield (_NARROWEST - 2 * _END) / (hops[-1].end - hops[0].start)
    for hop in hops:
        yield _room(hop.start, hop.end, say) / hop.size
    for one, other in pairwise(hops):
        yield 2 * (_room(one.size, other.size, say) + _SIGN) / (one.size + other.size)


def _room(one: Decimal, other: Decimal, say: Say) -> Decimal:
    """Units between the middles of two numbers side by side."""
    return Decimal(_SIGN * (len(say.number(one)) + len(say.number(other))) / 2 + _BETWEEN)


def _says(gap: Gap, drawn: tuple[_Drawn, ...], say: Say, *, sized: bool) -> Markup:
    if not sized:
        ends = say.listed(tuple(say.number(one.hop.end) for one in drawn))
        return Markup.escape(say("number_line_unsized", start=say.number(gap.smaller), ends=ends))
    told = tuple(
        say("number_line_hop", size=say.number(one.hop.size), end=say.number(one.hop.end))
        for one in drawn
    )
    start, end = say.number(gap.smaller), say.number(gap.larger)
    says = say("number_line", start=start, end=end, hops=say.listed(told))
    if any(one.broken for one in drawn):
        says = f"{says} {say('number_line_break')}"
    return Markup.escape(says)


def _line(gap: Gap, drawn: tuple[_Drawn, ...], places: list[int], width: int) -> str:
    """The line from edge to edge, broken where it does not begin at 0 and in hops that are too long."""
    begin = [12] if gap.smaller else []
    middles = [(left + right) // 2 for left, right in pairwise(places)]
    breaks = begin + [x for x, one in zip(middles, drawn, strict=True) if one.broken]
    broken = "".join(f"H{x - 5}l3-6 4 12 3-6" for x in breaks)
    return f"M4 {_BASE}{broken}H{width - 4}"


def _ticks(places: list[int]) -> str:
    return "".join(f"M{place} {_BASE - 5}v10" for place in places)


def _arcs(places: list[int]) -> str:
    """An arch for each hop."""
    arches = (f"q{(right - left) // 2}-52 {right - left} 0" for left, right in pairwise(places))
    return f"M{places[0]} {_BASE - 6}{''.join(arches)}"


def _numbers(hops: tuple[Hop, ...], places: list[int], say: Say, *, sized: bool) -> str:
    stops = (hops[0].start, *(hop.end for hop in hops))
    below = [(place, say.number(stop), 79) for place, stop in zip(places, stops, strict=True)]
    middles = ((left + right) // 2 for left, right in pairwise(places))
    above = [
        (x, f"+{say.number(hop.size)}" if sized else "?", 20)
        for x, hop in zip(middles, hops, strict=True)
    ]
    return "".join(f'<text x="{x}" y="{y}">{text}</text>' for x, text, y in (*below, *above))
