"""Records of a download whose figures no food can have, and figures worth a look before a food is added."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from decimal import Decimal

from generator.check.food_figures import told, way_out
from generator.compute.food_figures import doubts, label_rounding
from generator.model.food_record import FoodRecord, Imported
from generator.problems import LessonError, Place, Problem
from generator.read.fooddata.all_figures import all_figures
from generator.read.fooddata.index import INDEX


def figures_questioned(record: FoodRecord) -> tuple[str, ...]:
    """What is questionable about a record's figures, a sentence each.

    Raises:
        LessonError: a figure cannot be; the record is not to be added.
    """
    name, size = f"“{record.description}”", record.label.size if record.label else Decimal(0)
    rounding = label_rounding(size) if size > 0 else Decimal(1)
    found = tuple(doubts(record.per_100g, rounding))
    wrong = [doubt for doubt in found if not doubt.can_be]
    if wrong:
        hint = "take the download in again; if it says the same, choose another record"
        raise LessonError(
            Problem(Place(INDEX), told(f"{name}, {record.fdc},", doubt), hint) for doubt in wrong
        )
    return tuple(f"{told(name, doubt)}: {way_out(doubt, record.fdc)}." for doubt in found)


def impossible_records(index: sqlite3.Connection, imported: Imported) -> Iterator[str]:
    """Every record of one kind, without a brand, that cannot be added, a clause each."""
    for record in all_figures(index, imported.kind):
        for doubt in doubts(record.per_100g):
            if not doubt.can_be:
                yield told(f"“{record.description}”, {record.fdc},", doubt)
                break
