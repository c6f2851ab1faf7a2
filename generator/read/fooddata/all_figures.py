"""The figures of every food of one kind in the index, one food after the other."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from itertools import groupby

from generator.model.food_record import FIGURES
from generator.read.fooddata.amounts import unpacked
from generator.read.fooddata.layout import KINDS, NUTRIENTS

_VALUES = """
SELECT fdc, description, amounts FROM food JOIN value USING (fdc) WHERE data_type = ? ORDER BY fdc
"""


@dataclass(frozen=True, slots=True)
class RecordFigures:
    """What 100 g of one food hold."""

    fdc: int
    """FoodData Central id."""
    description: str
    """The record's own title."""
    per_100g: Mapping[str, Decimal | None]
    """By the names of ``FIGURES``; nothing where the record has no value."""


def all_figures(index: sqlite3.Connection, title: str) -> Iterator[RecordFigures]:
    """Every food of a kind without a brand; none of packages, whose labels round each serving.

    Args:
        index: as ``opened_index`` gives it.
        title: of the kind, such as ``SR Legacy``.
    """
    kind = next(kind for kind in KINDS.values() if kind.title == title)
    if kind.branded:
        return
    rows = index.execute(_VALUES, (kind.data_type,))
    for (fdc, description), pieces in groupby(rows, key=lambda row: (row[0], row[1])):
        amounts: dict[int, str] = {}
        for _, _, text in pieces:
            amounts |= unpacked(text)
        chosen = {
            name: next((amounts[one] for one in NUTRIENTS[name] if one in amounts), None)
            for name in FIGURES
        }
        held = {name: None if text is None else Decimal(text) for name, text in chosen.items()}
        yield RecordFigures(fdc, description, held)
