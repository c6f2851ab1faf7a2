"""Which two numbers a claim is about."""

from __future__ import annotations

import re
from decimal import Decimal

from generator.check.claims.claim import Claim
from generator.check.claims.elsewhere import of_earlier, of_some, of_totals
from generator.check.claims.mentions import Mention, mentions
from generator.check.claims.of_foods import Named
from generator.check.claims.of_rows import gaps, rows_won
from generator.check.claims.pair import NOTHING_KNOWN, Pair, Subject
from generator.check.claims.read import Sentence
from generator.check.rows import rows_called
from generator.compute.result import Comparison
from generator.language import Language
from generator.language.form import Form
from generator.language.grammar import Grammar, plain_digits

_BEFORE = re.compile(r"(\d[\d.,]*)\s*(?:[^\W\d_]+\s+){0,2}$")
_AFTER = re.compile(r"\s*(?:[^\W\d_]+\s+){0,1}(\d[\d.,]*)")


def subject(
    claim: Claim, sentence: Sentence, comparison: Comparison, language: Language
) -> Subject:
    """What a claim is about: numbers beside it, gaps, foods, rows, the total, a side, or anything."""
    grammar, text = language.claims, sentence.text
    if numbers := _numbers_beside(claim, text, grammar):
        return Subject((numbers,), named=True)
    named = mentions(text, comparison, language)
    start, end = _clause(claim, text, grammar)
    here = tuple(mention for mention in named if start <= mention.start < end) or named
    foods = tuple(mention for mention in here if mention.seats)
    if grammar.gap.search(text[start:end]) and not foods:
        return gaps(claim, text, comparison, grammar)
    if (
        claim.both
        and len({(mention.seats, mention.side) for mention in here}) < 2
        and not _counted(foods, text, grammar)
    ):
        return NOTHING_KNOWN
    side = next((mention for mention in here if mention.side is not None), None)
    if claim.form in {Form.ROWS, Form.EVERY_ROW}:
        return rows_won(claim, side.side if side else None, comparison)
    called = rows_called(text[start:end], grammar) or sentence.rows
    rows = sorted({row % len(comparison.rows) for row in called if row < len(comparison.rows)})
    if foods:
        pairs = Named(claim, foods, text, comparison, grammar).pairs()
        if len({food.seats for food in foods}) == 1:
            earlier = tuple(one for one in named if one.start < start and one.seats)
            if not earlier and sentence.before:
                earlier = mentions(sentence.before, comparison, language)
            whole = side.side if side else None
            totals = grammar.total.search(text[start:end]) is not None
            pairs += (
                *of_earlier(claim, foods[0], earlier, comparison),
                *of_some(claim, foods[0], rows, whole, comparison),
                *of_totals(foods[0], whole, comparison, totals=totals),
            )
        return Subject(pairs, named=True)
    summed = grammar.total.search(text) or (side and not grammar.row.search(text))
    pairs = _of_sides(comparison, rows, summed=bool(summed), directed=side is not None)
    if side and (side.side == 1) != (side.start >= claim.start):
        pairs = tuple(pair.turned for pair in pairs)
    is_named = bool(rows or summed or side)
    if (
        not is_named
        and text[start : claim.start].strip()
        and not grammar.states.search(text[start:end])
    ):
        return NOTHING_KNOWN
    return Subject(pairs, is_named, every=bool(rows))


def _of_sides(
    comparison: Comparison, rows: list[int], *, summed: bool, directed: bool
) -> tuple[Pair, ...]:
    """Both sides of the rows called by number, of the total, or of any of them."""
    if rows:
        return tuple(_row_pair(comparison, row, directed=directed) for row in rows)
    total = _total(comparison, directed=directed)
    if summed:
        return (total,)
    every = range(len(comparison.rows))
    return (*(_row_pair(comparison, row, directed=directed) for row in every), total)


def _counted(foods: tuple[Mention, ...], sentence: str, grammar: Grammar) -> bool:
    """Whether a number of portions is named: *two apples* and an apple are two things."""
    return len(foods) > 1 and any(grammar.counted.search(sentence[: food.start]) for food in foods)


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


def _row_pair(comparison: Comparison, row: int, *, directed: bool) -> Pair:
    gap = comparison.rows[row].gap
    return Pair(gap.first, gap.second, directed, (gap.first, gap.second))


def _total(comparison: Comparison, *, directed: bool = True) -> Pair:
    total = comparison.total
    return Pair(total.first, total.second, directed, (total.first, total.second))
