"""A trace as lines to read, and as JSON for another program: the ledger with its steps in words."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from generator.author.brings_words import brings_words
from generator.author.step_words import digits, step_words
from generator.compute.figure import Figure


def trace_lines(figures: Iterable[Figure]) -> Iterator[str]:
    """Each number, with its steps indented below it, and of a portion what it brings."""
    for figure in figures:
        yield f"{figure.id}: {digits(figure.value)} {figure.unit}"
        for step in figure.steps:
            what, says = step_words(step)
            yield f"    {what}: {says}"
        for says in brings_words(figure):
            yield f"    brings: {says}"


def trace_json(figures: Iterable[Figure]) -> str:
    """A list of objects; numbers are text, so that they stay exact (``1/3`` where decimals never end)."""
    return json.dumps([_data(figure) for figure in figures], ensure_ascii=False, indent=1)


def _data(figure: Figure) -> dict[str, object]:
    words = map(step_words, figure.steps)
    return {
        "id": figure.id,
        "kind": figure.kind.value,
        "value": digits(figure.value),
        "unit": figure.unit.value,
        "exact": str(figure.exact),
        "stop": figure.stop,
        "row": figure.row,
        "side": figure.side,
        "foods": [held.id for held in figure.foods],
        "move": figure.move,
        "steps": [{"what": what, "says": says} for what, says in words],
        "brings": list(brings_words(figure)),
    }
