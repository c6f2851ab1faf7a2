"""A text into its sentences, and a sentence into what it claims."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from generator.check.claims.claim import Claim
from generator.language.form import Form
from generator.language.grammar import Grammar


@dataclass(frozen=True, slots=True)
class Sentence:
    """One sentence, with the row that its paragraph has last called by number."""

    text: str
    """Without space around it."""
    rows: frozenset[int]
    """Rows counted from 0, -1 for the last; called in this sentence or before it in the paragraph."""


def rows_called(text: str, grammar: Grammar) -> frozenset[int]:
    """Rows that a text calls by number, counted from 0; the last one is -1."""
    called: set[int] = set()
    if not grammar.row.search(text):
        return frozenset()
    for found in grammar.rows.finditer(text):
        for word in re.findall(r"\w+", found["after"] or found["before"]):
            number = grammar.number(word)
            if grammar.last.fullmatch(word):
                called.add(-1)
            elif number is not None:
                called.add(int(number) - 1)
    return frozenset(called)


def claims_of(sentence: str, grammar: Grammar) -> Iterator[Claim]:
    """What a sentence claims, in the order of the patterns.

    A question claims nothing, unless it asks why something is so; nor does a claim that is
    taken back before it is made: *if it held twice as much*, *does not hold more*.
    """
    if sentence.rstrip("”\"')").endswith("?") and not grammar.telling.search(sentence):
        return
    read: list[tuple[int, int]] = []
    small = sentence.lower()
    for kind in grammar.claims:
        if not any(sign in small for sign in kind.signs):
            continue
        for found in kind.pattern.finditer(sentence):
            start, end = found.span()
            if any(start < other_end and other_start < end for other_start, other_end in read):
                continue
            if grammar.doubt.search(clause_before(sentence, start, grammar)):
                continue
            if claim := _claim(kind.form, found, grammar):
                read.append((start, end))
                yield claim


def clause_before(sentence: str, start: int, grammar: Grammar) -> str:
    """The part of a claim's clause that stands before it."""
    return grammar.clauses.split(sentence[:start])[-1]


def _claim(form: Form, found: re.Match[str], grammar: Grammar) -> Claim | None:
    groups = found.groupdict()
    number = grammar.number(groups["n"]) if groups.get("n") else Fraction(1)
    if number is None or number == 0:
        return None
    if groups.get("less"):
        number = -number
    leeway = grammar.leeway(groups.get("leeway"))
    return Claim(form, leeway, number, found[0].strip(), found.start(), found.end())
