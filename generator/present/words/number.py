"""Numbers in both their spellings."""

from __future__ import annotations

from decimal import Decimal

from generator.model.measure import Measure
from generator.model.moment import clock
from generator.present.views.number import Number
from generator.present.words.say import Say, digits


def number(value: Decimal | int, say: Say) -> Number:
    """A bare number: ``1,420`` and ``1420``."""
    return Number(say.number(value), digits(Decimal(value)))


def quantity(value: Decimal, measure: Measure, say: Say) -> Number:
    """A number with its unit: ``1,420 kcal`` and ``1420``."""
    return Number(say.quantity(value, measure), digits(value))


def moment(at: Decimal) -> Number:
    """A time in the video: ``1:10`` and ``70``, its seconds."""
    return Number(clock(at), digits(at))


def arithmetic(written: str, say: Say) -> str:
    """An equation that is written with decimal points, with the decimal sign of the language."""
    return written.replace(".", say.number(Decimal("0.5"))[1])
