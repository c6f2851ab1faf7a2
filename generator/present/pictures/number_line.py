"""Counting up from the smaller to the larger number of a row, drawn as hops on an open number line."""

from __future__ import annotations

from itertools import accumulate, pairwise

from markupsafe import Markup

from generator.compute.count_up import Hop, count_up
from generator.compute.gap import Gap
from generator.present.words.say import Say, digits

_END = 30
"""Units from an end of the line to the edge of the picture: room for half of a long number."""
_NARROW = 44
"""Units of a hop; an open number line keeps order, not scale, or hops of ten beside hundreds would vanish."""
_WIDER = 10
"""Units more for each digit of a hop."""
_BASE = 58
"""Where the line lies, in units from the top."""


def number_line(gap: Gap, say: Say) -> Markup:
    """The picture of a gap, or nothing where both sides hold the same."""
    hops = count_up(gap.smaller, gap.larger)
    if not hops:
        return Markup("")
    widths = (_NARROW + _WIDER * len(digits(hop.size).replace(".", "")) for hop in hops)
    places = list(accumulate(widths, initial=_END))
    width = places[-1] + _END
    drawn = (
        f'<svg class="line" viewBox="0 0 {width} 84" role="img" aria-label="{_says(gap, hops, say)}">'
        f'<path d="M4 {_BASE}H{width - 4}{_ticks(places)}"/>'
        f'<path class="hops" d="{_arcs(places)}"/>{_numbers(hops, places, say)}</svg>'
    )
    return Markup(drawn)  # noqa: S704  # made of numbers, and of a sentence without < or quotes


def _says(gap: Gap, hops: tuple[Hop, ...], say: Say) -> Markup:
    told = tuple(
        say("number_line_hop", size=say.number(hop.size), end=say.number(hop.end)) for hop in hops
    )
    start, end = say.number(gap.smaller), say.number(gap.larger)
    return Markup.escape(say("number_line", start=start, end=end, hops=say.listed(told)))


def _ticks(places: list[int]) -> str:
    return "".join(f"M{place} {_BASE - 5}v10" for place in places)


def _arcs(places: list[int]) -> str:
    """Half an ellipse for each hop."""
    arcs = pairwise(places)
    return "".join(
        f"M{left} {_BASE - 6}Q{(left + right) / 2:g} 0 {right} {_BASE - 6}" for left, right in arcs
    )


def _numbers(hops: tuple[Hop, ...], places: list[int], say: Say) -> str:
    stops = (hops[0].start, *(hop.end for hop in hops))
    below = [(place, say.number(stop), 79) for place, stop in zip(places, stops, strict=True)]
    middles = ((left + right) / 2 for left, right in pairwise(places))
    above = [(x, f"+{say.number(hop.size)}", 20) for x, hop in zip(middles, hops, strict=True)]
    return "".join(f'<text x="{x:g}" y="{y}">{text}</text>' for x, text, y in (*below, *above))
