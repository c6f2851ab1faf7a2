"""The way out of a claim that does not hold: the true ratio, and the phrase that does hold."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from math import floor

from generator.check.claims.claim import Claim
from generator.check.claims.pair import Pair
from generator.compute.rounding import to_places, whole
from generator.language.form import Form
from generator.language.phrases import Phrases

_PLAIN = {Form.MORE, Form.LESS, Form.GAP, Form.GAP_SHARE}
"""Forms that a ratio would not help to put right."""
_GAPS = {Form.GAP, Form.GAP_SHARE}
"""Forms that are put right by the gap."""


def offer(claim: Claim, pair: Pair, unit: str, words: Phrases) -> str:
    """Say what is true of a pair and which phrase holds, for the educator to take over."""
    if claim.form in {Form.ROWS, Form.EVERY_ROW}:
        return f"it is so in {pair.first} of {pair.second} rows: say {pair.first}"
    if claim.form in {Form.MOST, Form.LEAST}:
        if claim.negated:
            return f"it is {pair.first:,} {unit}, and none is {_beyond(claim)}: leave the not out"
        held = max(pair.others) if claim.form is Form.MOST else min(pair.others)
        if pair.gaps:
            return f"it is {pair.first:,} {unit}: name the row whose gap is {held:,}"
        return f"it holds {pair.first:,} {unit}: name the food that holds {held:,}"
    if pair.counted and claim.form is Form.SAME and pair.first != pair.second:
        phrase = words.over if pair.first > pair.second else words.under
        return f"{_against(pair)}: say `{phrase.strip()}`"
    known = (
        _against(pair) if claim.form in _PLAIN or 0 in {pair.first, pair.second} else _ratio(pair)
    )
    return f"{known}: say `{_phrase(claim.form, pair, unit, words)}`"


def _phrase(form: Form, pair: Pair, unit: str, words: Phrases) -> str:
    larger, smaller = max(pair.first, pair.second), min(pair.first, pair.second)
    more = pair.first > pair.second
    if larger == smaller:
        return words.same
    if form in {Form.MORE, Form.LESS}:
        return words.more if more else words.less
    if form not in _GAPS and smaller >= Decimal("0.9") * larger:
        return words.alike
    multiple = ""
    if form not in _GAPS and smaller:
        multiple = _multiple(Fraction(larger) / Fraction(smaller), words, more=more)
    return multiple or f"{larger - smaller:,} {unit} {words.more if more else words.less}"


def _multiple(times: Fraction, words: Phrases, *, more: bool) -> str:
    """``more than four times`` for 4.6, ``less than a quarter`` for its inverse; nothing below 1.7."""
    names = words.times if more else words.parts
    nearest, below = whole(times), floor(times)
    if 2 <= nearest <= 10 and abs(times - nearest) <= Fraction(nearest, 20):
        return ("" if times == nearest else words.about) + names[nearest - 2]
    if below >= 2:
        phrase = (words.over if more else words.under) + names[min(below, 10) - 2]
        return phrase.replace(*words.drawn_together)
    if times >= Fraction(17, 10):
        return (words.almost if more else words.over) + names[0]
    return ""


def _beyond(claim: Claim) -> str:
    return "more" if claim.form is Form.MOST else "less"


def _against(pair: Pair) -> str:
    return f"{pair.first:,} against {pair.second:,}"


def _ratio(pair: Pair) -> str:
    """``410 is 4.6 times 90``: one digit after the point from 1 up, two below."""
    times = Fraction(pair.first) / Fraction(pair.second)
    digits = to_places(times, 1 if times >= 1 else 2).normalize()
    return f"{pair.first:,} is {digits:f} times {pair.second:,}"
