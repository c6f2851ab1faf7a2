"""One number at a word of a text, with its halves, its decimals and its dozens."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from generator.language.digits import digits_at
from generator.language.number_words import NumberWords, Table

_LONGEST = 4
"""Words of the longest entry of a table: *three quarters of a*."""


@dataclass(frozen=True, slots=True)
class Amount:
    """What was read."""

    value: Fraction
    """Exact."""
    used: int
    """How many tokens it takes."""
    loose: bool = False
    """Whether it may mean *very many*, or count other things."""
    unit: str = ""
    """The unit inside of it."""


def amount_at(words: Sequence[str], at: int, known: NumberWords) -> Amount | None:
    """The number that begins at a token; tokens are in small letters and have no accents."""
    first = words[at]
    if first not in known.begin and not first[:1].isnumeric():
        return None
    part = _part(words, at, known)
    if part or (first in known.point and (part := _below_one(words, at, known))):
        return part
    found = _first(words, at, known)
    return _with_half(words, at, _with_large(words, at, found, known), known) if found else None


def _part(words: Sequence[str], at: int, known: NumberWords) -> Amount | None:
    """*Half a gram*, *a quarter of a thousand*, *a couple of hundred*."""
    parts = known.parts
    for entries in (parts.before, parts.couple):
        if found := _entry(entries, words, at):
            value, used = found
            large = parts.large.get(_word(words, at + used))
            if large:
                return Amount(value * large, used + 1, loose=True)
            if entries is parts.before and _of_measure(words, at + used, known):
                return Amount(value, used)
    return None


def _of_measure(words: Sequence[str], at: int, known: NumberWords) -> bool:
    """Whether a unit stands there, of nothing or of what a measure is of."""
    parts = known.parts
    if _word(words, at) not in parts.units:
        return False
    return _word(words, at + 1) not in parts.of or _word(words, at + 2) in parts.held


def _below_one(words: Sequence[str], at: int, known: NumberWords) -> Amount | None:
    """*Point five*, with nothing but a unit or a mark behind it."""
    decimals = _decimals(words, at + 1, known)
    if not decimals or (at and words[at - 1] in known.no_point):
        return None
    after = _word(words, at + 1 + decimals[1])
    if after[:1].isalpha() and after not in known.parts.units:
        return None
    return Amount(decimals[0], 1 + decimals[1])


def _first(words: Sequence[str], at: int, known: NumberWords) -> Amount | None:
    """A number in digits or words, with its decimals; or a large word that needs none before it."""
    first, parts = words[at], known.parts
    if first[:1].isnumeric():
        digits = digits_at(words, at, known)
        return Amount(*digits) if digits else None
    if read := known.read(words, at):
        value, used = read
        loose = first in known.articles and used <= 2
        decimals = None
        if _word(words, at + used) in known.point:
            decimals = _decimals(words, at + used + 1, known)
        if decimals:
            return Amount(value + decimals[0], used + 1 + decimals[1])
        return Amount(Fraction(value), used, loose)
    after = _word(words, at + 1)
    if first in parts.one and (after in parts.large or _half_of_unit(words, at + 1, known)):
        return Amount(Fraction(1), 1, loose=after in parts.large)
    if first in parts.alone and not (at and words[at - 1] in parts.never_alone):
        return Amount(Fraction(parts.alone[first]), 1, loose=True)
    return None


def _decimals(words: Sequence[str], at: int, known: NumberWords) -> tuple[Fraction, int] | None:
    """Digits said one by one, or two of them as one number: *two five*, *twenty-five*."""
    said = ""
    while len(said) < 3 and at + len(said) < len(words):
        one = known.read(words[at + len(said) : at + len(said) + 1], 0)
        if one is None or one[0] > 9:
            break
        said += str(one[0])
    if said:
        return Fraction(int(said), 10 ** len(said)), len(said)
    both = known.read(words, at) if at < len(words) else None
    return (Fraction(both[0], 100), both[1]) if both and 10 <= both[0] <= 99 else None


def _with_large(words: Sequence[str], at: int, found: Amount, known: NumberWords) -> Amount:
    """*Two dozen*, *one point two five thousand*, and *a dozen and a half*."""
    parts = known.parts
    word = _word(words, at + found.used)
    if word not in parts.large:
        alone = parts.alone.get(words[at]) if found.used == 1 else None
        return _half_behind(words, at, found, known, Fraction(alone or 1)) if alone else found
    by = parts.large[word]
    loose = found.loose or word in parts.loose
    many = Amount(found.value * by, found.used + 1, loose)
    return _half_behind(words, at, many, known, Fraction(by)) if word in parts.loose else many


def _with_half(words: Sequence[str], at: int, found: Amount, known: NumberWords) -> Amount:
    """*And a half* behind a number, behind its unit, or before a large word."""
    halved = _half_behind(words, at, found, known, Fraction(1))
    if halved is not found:
        large = _word(words, at + halved.used)
        by = known.parts.large.get(large)
        loose = large in known.parts.loose
        return Amount(halved.value * by, halved.used + 1, loose) if by else halved
    half = _half_of_unit(words, at + found.used, known)
    if half is None:
        return found
    unit = words[at + found.used]
    return Amount(found.value + half[0], found.used + 1 + half[1], unit=unit)


def _half_behind(
    words: Sequence[str], at: int, found: Amount, known: NumberWords, of: Fraction
) -> Amount:
    half = _entry(known.parts.behind, words, at + found.used)
    return Amount(found.value + half[0] * of, found.used + half[1], found.loose) if half else found


def _half_of_unit(words: Sequence[str], at: int, known: NumberWords) -> tuple[Fraction, int] | None:
    """*Grams and a half*: not where another thing follows, as in *20 grams and a half cup*."""
    if _word(words, at) not in known.parts.units:
        return None
    half = _entry(known.parts.behind, words, at + 1)
    after = _word(words, at + 1 + half[1]) if half else ""
    return half if not after[:1].isalpha() or after in known.parts.goes_on else None


def _entry(entries: Table, words: Sequence[str], at: int) -> tuple[Fraction, int] | None:
    """The longest entry that begins at a token."""
    for used in range(_LONGEST, 0, -1):
        value = entries.get(tuple(words[at : at + used]))
        if value is not None and at + used <= len(words):
            return value, used
    return None


def _word(words: Sequence[str], at: int) -> str:
    return words[at] if at < len(words) else ""
