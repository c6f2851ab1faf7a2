"""The record of a film as YAML, a line for each number."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator

from generator.model.moment import clock
from generator.model.recorded import FilmedFigure, FilmedFood
from generator.present.words.say import digits

_BARE = re.compile(r"[0-9./]* ?[A-Za-z][A-Za-z0-9]*(?:[ -][A-Za-z0-9]+)*")
"""Words and amounts without any sign that means something to YAML."""


def recorded_text(lesson: str, on: str, figures: Iterable[FilmedFigure]) -> str:
    """The record as YAML.

    Args:
        lesson: id of the lesson.
        on: the day of filming, as ``2026-03-14``.
        figures: what was filmed.
    """
    head = [
        "# What the numbers were when this lesson was filmed. `python3 generator check` compares.",
        f"# After filming anew: python3 generator recorded {lesson}",
        f'filmed: "{on}"',
    ]
    lines = [f"  - {{{', '.join(_keys(one))}}}" for one in figures]
    return "\n".join([*head, "figures:" if lines else "figures: []", *lines]) + "\n"


def _keys(one: FilmedFigure) -> Iterator[str]:
    yield f"kind: {one.kind}"
    yield f"measure: {one.measure}"
    if one.foods:
        yield f"foods: [{', '.join(map(_food, one.foods))}]"
    texts = {"beside": one.beside, "side": one.side, "move": one.move, "person": one.person}
    for key, text in (texts | {"change": one.change, "asked": one.asked}).items():
        if text:
            yield f"{key}: {yaml_text(text)}"
    yield f"value: {digits(one.value)}"
    yield f"stop: {one.stop}"
    yield f'from: "{clock(one.start)}"'
    yield f'to: "{clock(one.end)}"'


def _food(food: FilmedFood) -> str:
    amount = f", amount: {yaml_text(food.amount)}" if food.amount else ""
    record = f", fdc: {food.fdc}" if food.fdc else ""
    return f"{{food: {yaml_text(food.food)}{amount}{record}}}"


def yaml_text(text: str) -> str:
    """Bare where YAML takes it for the same text, else in quotes that it reads the way JSON does."""
    bare = _BARE.fullmatch(text) and text not in {"true", "false", "null"}
    return text if bare else json.dumps(text, ensure_ascii=False)
