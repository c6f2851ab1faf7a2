"""An amount of a food as people write it: ``2 slices``, ``1 1/2 tazas``, ``2/3 de taza``, ``100 g``."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from generator.compute.holding import Holding
from generator.model.amount import Amount, parse_amount
from generator.model.unit_words import ONE, OTHER, PART, UnitForms
from generator.model.wording import FALLBACK
from generator.present.words.foreign import of_library
from generator.present.words.say import Say, as_decimal

_OF_SPOONS_AND_CUPS = {2, 3, 4, 6, 8}
"""Parts that household measures have; what was written with a point in others, ``1.2 oz``, stays so."""
_HALF = Fraction(1, 2)


def amount_words(holding: Holding, say: Say) -> str:
    """What is on a plate, by the number and the words of its unit; as written where there are none."""
    written = holding.item.amount or ""
    amount = parse_amount(written)
    if amount is None:
        return written
    if amount.grams is not None:
        exact = _decimal(amount.grams)
        return say("grams", grams=say.number(as_decimal(amount.grams) if exact is None else exact))
    if forms := holding.units.get(say.language):
        return _counted(amount, forms, say)
    serving = holding.serving
    if serving is None or serving.portion is None or say.language == FALLBACK:
        return written  # a label's own wording, or the educator's
    name = serving.portion.name(say.language)
    if serving.times == 1 and not name.foreign:
        return name.words
    return of_library(written)


def _counted(amount: Amount, forms: UnitForms, say: Say) -> str:
    number = amount.number
    written = _number(amount, say)
    if number.denominator > 1 and number < 1 and "/" in written:
        key = "amount_half" if number == _HALF else "amount_part"
        return say(key, number=written, unit=forms.get(PART, forms[ONE]))
    category = say.plural(Decimal(number.numerator) / Decimal(number.denominator))
    return say("amount", number=written, unit=forms.get(category, forms[OTHER]))


def _number(amount: Amount, say: Say) -> str:
    """``2``, ``2/3``, ``1 1/2``; the whole and its part stay on one line."""
    number, exact = amount.number, _decimal(amount.number)
    kept = amount.in_decimals and number.denominator not in _OF_SPOONS_AND_CUPS
    if exact is not None and (kept or number.denominator == 1):
        return say.number(exact)
    whole, part = divmod(number, 1)
    parts = f"{part.numerator}/{part.denominator}"
    return f"{say.number(whole)}\N{NO-BREAK SPACE}{parts}" if whole else parts


def _decimal(number: Fraction) -> Decimal | None:
    """A number in digits; nothing for one whose digits never end."""
    decimal = Decimal(number.numerator) / Decimal(number.denominator)
    return decimal if Fraction(decimal) == number else None
