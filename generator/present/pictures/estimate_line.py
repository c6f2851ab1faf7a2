"""A number line from 0, to scale, for an estimate and for the gap that is found afterwards."""

from __future__ import annotations

from fractions import Fraction

from markupsafe import Markup

from generator.compute.estimate import Line
from generator.compute.rounding import whole
from generator.present.words.say import Say

LEFT, LENGTH = 24, 252
"""Units from the edge of the picture to 0, and from 0 to the last number; the script knows them too."""
_BASE = 25
"""Where the line lies, in units from the top."""
_DIGIT = 13
"""How wide a digit of its numbers is at most, in units."""


def estimate_line(line: Line, say: Say) -> Markup:
    """The picture: a tick and a number for each step, and two marks that wait to be laid on it.

    What is said is a triangle above the line, what is found a ring on it: told apart without colour.
    """
    places = [whole(LEFT + LENGTH * Fraction(tick / line.end)) for tick in line.ticks]
    ticks = "".join(f"M{place} {_BASE - 6}v12" for place in places)
    said = [say.number(tick) for tick in line.ticks]
    numbers = "".join(
        f'<text x="{place}" y="{_BASE + 26}">{number}</text>'
        for place, number in list(zip(places, said, strict=True))[:: _every(places, said)]
    )
    label = Markup.escape(
        say("estimate_line", end=say.number(line.end), step=say.number(line.step))
    )
    drawn = (
        f'<svg class="estimates" viewBox="0 0 {2 * LEFT + LENGTH} {_BASE + 30}" role="img" aria-label="{label}">'
        f'<path d="M4 {_BASE}H{2 * LEFT + LENGTH - 4}{ticks}"/>{numbers}'
        f'<path data-said display="none" d="M0 {_BASE - 8}l-8-14h16z"/>'
        f'<circle data-found display="none" cy="{_BASE}" r="7"/></svg>'
    )
    return Markup(drawn)  # noqa: S704  # made of numbers, and of a sentence without < or quotes


def _every(places: list[int], said: list[str]) -> int:
    """Every how many ticks have room for a number, so that no two touch."""
    apart = places[1] - places[0]
    return -(-_DIGIT * max(map(len, said)) // apart)
