"""Which two numbers a claim is about."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal

from generator.check.claims.claim import Claim
from generator.check.claims.mentions import Mention, Seat, held_at, mentions
from generator.check.claims.read import Sentence, rows_called
from generator.compute.result import Comparison
from generator.language import Language
from generator.language.form import Form
from generator.language.grammar import Grammar, plain_digits

_BEFORE = re.compile(r"(\d[\d.,]*)\s*(?:[^\W\d_]+\s+){0,2}$")
_AFTER = re.compile(r"\s*(?:[^\W\d_]+\s+){0,1}(\d[\d.,]*)")


@dataclass(frozen=True, slots=True)
class Pair:
    """Two shown values a claim can be about."""

    first: Decimal
    """Of the one the sentence is about."""
    second: Decimal
    """Of the one it is held against."""
    directed: bool = True
    """Whether the sentence says which is which."""
    others: tuple[Decimal, ...] = ()
    """What *the most* and *the least* are held against."""

    @property
    def turned(self) -> Pair:
        """The same two the other way round."""
        return Pair(self.second, self.first, self.directed, self.others)


@dataclass(frozen=True, slots=True)
class Subject:
    """All pairs a claim may be about."""

    pairs: tuple[Pair, ...]
    """In the order of the rows; none where nothing is known."""
    named: bool
    """Whether the sentence names a food, a side, a row, the total or both numbers."""
    every: bool = False
    """Whether all of them must make it hold, as in *the first and the third row*; else one will do."""


def subject(
    claim: Claim, sentence: Sentence, comparison: Comparison, language: Language
) -> Subject:
    """What a claim is about: numbers beside it, foods, rows, the total, a side, or anything."""
    grammar = language.claims
    if numbers := _numbers_beside(claim, sentence.text, grammar):
        return Subject((numbers,), named=True)
    named = mentions(sentence.text, comparison, language)
    start, end = _clause(claim, sentence.text, grammar)
    here = [mention for mention in named if start <= mention.start < end] or list(named)
    foods = [mention for mention in here if mention.seats]
    called = rows_called(sentence.text[start:end], grammar) or sentence.rows
    rows = sorted({row % len(comparison.rows) for row in called if row < len(comparison.rows)})
    if foods:
        return Subject(_of_foods(claim, foods, comparison), named=True)
    side = next((mention for mention in here if mention.side is not None), None)
    turned = side is not None and (side.side == 1) != (side.start >= claim.end)
    pairs = tuple(_row_pair(comparison, row, directed=side is not None) for row in rows)
    if not pairs and grammar.total.search(sentence.text):
        pairs = (_total(comparison, directed=side is not None),)
    elif not pairs and side and not grammar.row.search(sentence.text):
        pairs = (_total(comparison),)
    known = bool(pairs)
    if not known:
        all_rows = range(len(comparison.rows))
        pairs = (
            *(_row_pair(comparison, row, directed=side is not None) for row in all_rows),
            _total(comparison, directed=side is not None),
        )
    if turned:
        pairs = tuple(pair.turned for pair in pairs)
    return Subject(pairs, named=known or side is not None, every=bool(rows))


def _numbers_beside(claim: Claim, sentence: str, grammar: Grammar) -> Pair | None:
    """``410 is almost double 90``: both numbers stand beside the claim."""
    before, after = _BEFORE.search(sentence[: claim.start]), _AFTER.match(sentence, claim.end)
    if not before or not after:
        return None
    first, second = (grammar.number(found[1].strip(".,")) for found in (before, after))
    if first is None or second is None:
        return None
    return Pair(_decimal(before[1]), _decimal(after[1]))


def _decimal(text: str) -> Decimal:
    return Decimal(plain_digits(text.strip(".,")))


def _clause(claim: Claim, sentence: str, grammar: Grammar) -> tuple[int, int]:
    """Where the clause of a claim begins and ends."""
    start, end = 0, len(sentence)
    for found in grammar.clauses.finditer(sentence):
        if found.end() <= claim.start:
            start = found.end()
        elif found.start() >= claim.end:
            end = min(end, found.start())
    return start, end


def _of_foods(claim: Claim, foods: list[Mention], comparison: Comparison) -> tuple[Pair, ...]:
    """Pairs of two foods named, or of one food and the one beside it."""
    before = [food for food in foods if food.start < claim.start]
    after = [food for food in foods if food.start >= claim.end]
    if before and after and before[-1].seats != after[0].seats:
        return _all_pairs(before[-1].seats, after[0].seats, comparison, directed=True)
    different = [food for food in foods if food.seats != foods[0].seats]
    if different and not (before and after):
        return _all_pairs(foods[0].seats, different[0].seats, comparison, directed=False)
    seats = foods[0].seats
    pairs = tuple(
        Pair(
            _value(comparison, seat),
            _value(comparison, _beside(seat)),
            _one_side(seats),
            _all(comparison),
        )
        for seat in sorted(seats)
    )
    named_first = before or claim.form in {Form.MOST, Form.LEAST}  # wherever it stands, it is meant
    return pairs if named_first else tuple(pair.turned for pair in pairs)


def _all_pairs(
    ones: frozenset[Seat], others: frozenset[Seat], comparison: Comparison, *, directed: bool
) -> tuple[Pair, ...]:
    return tuple(
        Pair(_value(comparison, one), _value(comparison, other), directed, _all(comparison))
        for one in sorted(ones)
        for other in sorted(others)
    )


def _one_side(seats: frozenset[Seat]) -> bool:
    """Whether the seats are one food; a word of both foods of a row tells no direction."""
    return len({side for _, side in seats}) == 1


def _beside(seat: Seat) -> Seat:
    return seat[0], 1 - seat[1]


def _value(comparison: Comparison, seat: Seat) -> Decimal:
    return held_at(comparison, seat).shown.value


def _all(comparison: Comparison) -> tuple[Decimal, ...]:
    return tuple(held.shown.value for held in comparison.holdings)


def _row_pair(comparison: Comparison, row: int, *, directed: bool) -> Pair:
    gap = comparison.rows[row].gap
    return Pair(gap.first, gap.second, directed, (gap.first, gap.second))


def _total(comparison: Comparison, *, directed: bool = True) -> Pair:
    total = comparison.total
    return Pair(total.first, total.second, directed, (total.first, total.second))
