"""Rows of a comparison that a text calls by number."""

from __future__ import annotations

import re

from generator.language.grammar import Grammar


def rows_called(text: str, grammar: Grammar) -> frozenset[int]:
    """Rows that a text calls by number, counted from 0; the last one is -1."""
    return frozenset(row for _, row in rows_at(text, grammar))


def rows_at(text: str, grammar: Grammar) -> tuple[tuple[int, int], ...]:
    """Rows that a text calls by number, each with where it does, in order."""
    if not grammar.row.search(text):
        return ()
    called: list[tuple[int, int]] = []
    for found in grammar.rows.finditer(text):
        group = "after" if found["after"] else "before"
        for word in re.finditer(r"\w+", found[group]):
            number = grammar.number(word[0])
            at = found.start(group) + word.start()
            if grammar.last.fullmatch(word[0]):
                called.append((at, -1))
            elif number is not None:
                called.append((at, int(number) - 1))
    return tuple(called)
