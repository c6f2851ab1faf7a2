"""A small exact arithmetic over the numbers of a lesson: + − × ÷, half and brackets.

``half lunch.total.gap`` and ``soups.broth.gap × 4`` are such sums. What is added or subtracted are
numbers of the lesson in one unit; a number that is written out only multiplies or divides. So no
answer is typed, and every one follows the lesson when a food changes.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from generator.compute.figure import Figure
from generator.model.figure import Tally
from generator.model.measure import Measure, Unit

_TOKEN = re.compile(r"[^\W\d_][\w.+-]*|\d+|\S")
_SIGNS = {"-": "−", "*": "×", "/": "÷"}
"""What may be typed instead of a sign."""
_PLUS_MINUS = {"+", "−"}
_TIMES_BY = {"×", "÷"}

Part = Fraction | str
"""A number, or a sign between numbers."""


class SumError(ValueError):
    """What is wrong with a sum, and the way out."""

    def __init__(self, what: str, hint: str, word: str = "") -> None:
        super().__init__(what)
        self.what, self.hint, self.word = what, hint, word


@dataclass(frozen=True, slots=True)
class Reckoned:
    """What a sum comes to."""

    value: Fraction
    """In ``unit``, exactly."""
    unit: Unit | Tally | None
    """Nothing for a number that is written out, and for one number as a multiple of another."""
    measure: Measure | None
    """What its numbers measure; nothing where none of the lesson is among them."""
    parts: tuple[Part, ...]
    """The sum with its numbers in their places, to be read."""
    names: tuple[str, ...] = ()
    """Of the numbers of the lesson in it."""


def reckon(written: str, figures: Mapping[str, Figure]) -> Reckoned:
    """Work out a sum.

    Args:
        written: as the lesson has it.
        figures: numbers of the lesson by every name they may be called by.

    Raises:
        SumError: it cannot be read, names no number, mixes units or divides by zero.
    """
    return _Reader([_SIGNS.get(one, one) for one in _TOKEN.findall(written)], figures).all()


class _Reader:
    """Reads a sum from left to right: sums of products of factors."""

    def __init__(self, tokens: list[str], figures: Mapping[str, Figure]) -> None:
        self.tokens, self.figures, self.at = tokens, figures, 0

    def all(self) -> Reckoned:
        found = self.chain(_PLUS_MINUS, lambda: self.chain(_TIMES_BY, self.factor))
        if self.next():
            raise SumError(f"`{self.next()}` stands where a sign or the end is wanted", _HOW)
        if not found.names:
            raise SumError("names no number of the lesson, and answers are not typed", _HOW)
        return found

    def chain(self, signs: set[str], inner: Callable[[], Reckoned]) -> Reckoned:
        found = inner()
        while self.next() in signs:
            found = _together(found, self.take(), inner())
        return found

    def factor(self) -> Reckoned:
        word = self.take()
        if word == "half":
            return _together(self.factor(), "÷", Reckoned(Fraction(2), None, None, (Fraction(2),)))
        if word == "(":
            found = self.chain(_PLUS_MINUS, lambda: self.chain(_TIMES_BY, self.factor))
            if self.take() != ")":
                raise SumError("a bracket is left open", "close it with `)`")
            return found
        if word.isdigit():
            return Reckoned(Fraction(word), None, None, (Fraction(word),))
        return self.named(word)

    def named(self, token: str) -> Reckoned:
        figure = self.figures.get(in_order(token))
        if figure is None:
            raise SumError(f"`{token}` is no number of the lesson", _HOW, token)
        value = Fraction(figure.value)
        return Reckoned(value, figure.unit, figure.measure, (value,), (figure.id,))

    def next(self) -> str:
        return self.tokens[self.at] if self.at < len(self.tokens) else ""

    def take(self) -> str:
        token = self.next()
        if not token:
            raise SumError("the sum breaks off", _HOW)
        self.at += 1
        return token


_HOW = "write names of numbers as `trace` prints them, with + - * / and spaces between: half lunch.total.gap"


def in_order(name: str) -> str:
    """A name whose row is given by its two foods in any order: ``apple-raw+apple-pie.gap``."""
    parts = name.split(".")
    return ".".join("_".join(sorted(part.split("+"))) if "+" in part else part for part in parts)


def _together(one: Reckoned, sign: str, other: Reckoned) -> Reckoned:
    if one.measure and other.measure and one.measure is not other.measure:
        what = f"{one.measure} and {other.measure} cannot be reckoned together"
        raise SumError(what, "take numbers of one comparison, or of two that compare the same")
    value, unit = (_added if sign in _PLUS_MINUS else _multiplied)(one, sign, other)
    measure, names = one.measure or other.measure, one.names + other.names
    parts = (*_bracketed(one, sign), sign, *_bracketed(other, sign, second=True))
    return Reckoned(value, unit, measure, parts, names)


def _added(one: Reckoned, sign: str, other: Reckoned) -> tuple[Fraction, Unit | Tally | None]:
    if not (one.names and other.names):
        what = f"a number that is written out is no part of {sign}"
        raise SumError(what, "take a number of the lesson by its name")
    if one.unit is not other.unit:
        raise SumError(f"{_unit(one)} and {_unit(other)} cannot be added or subtracted", _SAME_UNIT)
    return (one.value + other.value if sign == "+" else one.value - other.value), one.unit


def _multiplied(one: Reckoned, sign: str, other: Reckoned) -> tuple[Fraction, Unit | Tally | None]:
    if sign == "×":
        if one.unit and other.unit:
            raise SumError(f"{_unit(one)} times {_unit(other)} is nothing to count", _SAME_UNIT)
        return one.value * other.value, one.unit or other.unit
    if other.unit and one.unit is not other.unit:
        raise SumError(f"{_unit(one)} cannot be divided by {_unit(other)}", _SAME_UNIT)
    if not other.value:
        raise SumError("divides by zero", "divide by a number that is not 0 in this lesson")
    return one.value / other.value, None if other.unit else one.unit


_SAME_UNIT = "take numbers in one unit, and a plain number to multiply or divide by"


def _unit(one: Reckoned) -> str:
    return str(one.unit or "a plain number")


def _bracketed(one: Reckoned, sign: str, *, second: bool = False) -> tuple[Part, ...]:
    """A sum inside a product wears brackets, and whatever is taken away or divided by."""
    signs = {part for part in one.parts if isinstance(part, str)} if len(one.parts) > 1 else set()
    sums = bool(signs & _PLUS_MINUS)
    needed = (sums and sign in _TIMES_BY) or (second and bool(signs) and sign in {"−", "÷"})
    return ("(", *one.parts, ")") if needed else one.parts


def in_line(words: Iterable[str]) -> str:
    """The words of a calculation on one line, brackets close to what is in them: ``(510 + 735) ÷ 2``."""
    return " ".join(words).replace("( ", "(").replace(" )", ")")
