"""Counts, shares and what a test says, in words."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from generator.compute.learned import Between, Learned
from generator.compute.rounding import to_places
from generator.compute.small_counts import Hidden, Part
from generator.compute.wilson import Interval, wilson
from generator.present.report.view import BarView, ShareView
from generator.present.words.families import VERDICT
from generator.present.words.say import Say

_LEAST_P = Fraction(1, 1000)
"""A smaller p is told as under it."""


def share(name: str, part: Part, at_least: int, say: Say, *, known: bool = True) -> ShareView:
    """Some of a number: how many, how many percent with their interval, and a bar."""
    of = say.number(part.of)
    if isinstance(part.count, Hidden):
        told = _hidden(part.count, say.number(at_least), of, say)
        return ShareView(name, known, told, percent="", bar=None)
    interval = wilson(part.count, part.of)
    percent = _percent(Decimal(part.count) / part.of, say)
    low, high = _percent(interval.low, say), _percent(interval.high, say)
    return ShareView(
        name,
        known,
        say("report_share", count=say.number(part.count), of=of),
        say("report_percent", percent=percent, low=low, high=high),
        _bar(part.count, part.of, interval),
    )


def _hidden(how: Hidden, few: str, of: str, say: Say) -> str:
    match how:
        case Hidden.FEW:
            return say("report_few", few=few, of=of)
        case Hidden.ALL_BUT_FEW:
            return say("report_all_but_few", few=few, of=of)
        case Hidden.UNTOLD:
            return say("report_untold", of=of)


def verdict(learned: Learned, say: Say) -> tuple[str, ...]:
    """What the test says, then its figures where there are any."""
    said = say(VERDICT.key(learned.verdict))
    chance = learned.chance
    if chance is None:
        return (said,)
    figures = {
        "exact": _between(chance.least.exact, chance.most.exact, say),
        "mid": _between(chance.least.mid_p, chance.most.mid_p, say),
    }
    return said, _test(chance, figures, say)


def _test(chance: Between, figures: dict[str, str], say: Say) -> str:
    return say("report_test", **figures) if chance.one else say("report_test_open", **figures)


def _between(least: Fraction, most: Fraction, say: Say) -> str:
    low, high = _p(least, say), _p(most, say)
    return low if low == high else say("report_between", low=low, high=high)


def _p(exact: Fraction, say: Say) -> str:
    if exact < _LEAST_P:
        return say("report_under", number=say.number(Decimal(_LEAST_P.numerator) / 1000))
    return say.number(to_places(exact, 3).normalize())


def _percent(exact: Decimal, say: Say) -> str:
    return say.percent(to_places(Fraction(exact) * 100, 0))


def _bar(count: int, of: int, interval: Interval) -> BarView:
    def long(exact: Fraction) -> str:
        return f"{to_places(exact * 100, 2):f}"

    low, high = Fraction(interval.low), Fraction(interval.high)
    return BarView(long(Fraction(count, of)), long(low), long(high))
