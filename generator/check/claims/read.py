"""A text into its sentences, and a sentence into what it claims."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from generator.check.claims.claim import Claim
from generator.language.form import Form, Leeway
from generator.language.grammar import Grammar, Kind, signs_in


@dataclass(frozen=True, slots=True)
class Sentence:
    """One sentence, with the row that its paragraph has last called by number."""

    text: str
    """Without space around it."""
    rows: frozenset[int]
    """Rows counted from 0, -1 for the last; called in this sentence or before it in the paragraph."""
    before: str = ""
    """The sentence before it in its text, whose foods it may go on about."""


def claims_of(sentence: str, grammar: Grammar) -> Iterator[Claim]:
    """What a sentence claims, in the order of the patterns.

    A question claims nothing, unless it asks why something is so; nor does what somebody else says,
    nor a claim that is taken back before it is made: *if it held twice as much*. What is denied,
    *does not hold more*, is claimed the other way round.
    """
    if sentence.rstrip("”\"')").endswith("?") and not grammar.telling.search(sentence):
        return
    read: list[tuple[int, int]] = []
    signs = signs_in(sentence, grammar)
    for kind in grammar.claims:
        if signs.isdisjoint(kind.signs):
            continue
        for found in kind.pattern.finditer(sentence):
            start, end = found.span("claim" if "claim" in found.groupdict() else 0)
            if any(start < other_end and other_start < end for other_start, other_end in read):
                continue
            if grammar.reported.search(sentence):
                return
            if claim := _claim(kind, found, (start, end), grammar):
                read.append((start, end))
                yield claim


def _claim(
    kind: Kind, found: re.Match[str], span: tuple[int, int], grammar: Grammar
) -> Claim | None:
    """The claim of a pattern that was found; nothing where words before it take it back."""
    start, end = span
    sentence = found.string
    before = clause_before(sentence, start, grammar)
    denial = grammar.denial.search(before)
    if grammar.doubt.search(before[: denial.start()] if denial else before):
        return None
    groups = found.groupdict()
    number = grammar.number(groups["n"]) if groups.get("n") else Fraction(1)
    if number is None or number == 0:
        return None
    if groups.get("less") or groups.get("behind"):
        number = -number
    leeway = grammar.leeway(groups.get("leeway") or groups.get("nearly"))
    negated = denial is not None or bool(groups.get("not"))
    even = groups.get("even") or (denial and any(denial.groupdict().values()))
    if negated and even and kind.form in {Form.TIMES, Form.SHARE}:
        leeway, negated = Leeway.UNDER, False  # not even twice: less than twice
    text = sentence[start:end].strip()
    return Claim(kind.form, leeway, number, text, start, end, negated, kind.both)


def clause_before(sentence: str, start: int, grammar: Grammar) -> str:
    """The part of a claim's clause that stands before it."""
    return grammar.clauses.split(sentence[:start])[-1]
