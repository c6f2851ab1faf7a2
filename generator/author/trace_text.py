"""A trace as lines to read, and as JSON for another program."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from generator.compute.trace import Figure


def trace_lines(figures: Iterable[Figure]) -> Iterator[str]:
    """Each number, with its steps indented below it."""
    for figure in figures:
        yield f"{figure.id}: {figure.value} {figure.unit}"
        for step in figure.steps:
            yield f"    {step.what}: {step.says}"


def trace_json(figures: Iterable[Figure]) -> str:
    """A list of objects; numbers are text, so that they stay exact (``1/3`` where decimals never end)."""
    return json.dumps([_data(figure) for figure in figures], ensure_ascii=False, indent=1)


def _data(figure: Figure) -> dict[str, object]:
    steps = [{"what": step.what, "says": step.says} for step in figure.steps]
    return {
        "id": figure.id,
        "value": str(figure.value),
        "unit": figure.unit,
        "exact": str(figure.exact),
        "steps": steps,
    }
