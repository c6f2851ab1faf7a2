"""Records of a download whose figures no food can have, and figures worth a look before a food is added."""

from __future__ import annotations

from generator.check.food_figures import told, way_out
from generator.compute.food_figures import doubts
from generator.model.food_record import FoodRecord
from generator.problems import LessonError, Place, Problem
from generator.read.fooddata.index import INDEX


def figures_questioned(record: FoodRecord) -> tuple[str, ...]:
    """What is questionable about a record's figures, a sentence each.

    Raises:
        LessonError: a figure cannot be; the record is not to be added.
    """
    name = f"“{record.description}”"
    found = tuple(doubts(record.per_100g))
    wrong = [doubt for doubt in found if not doubt.can_be]
    if wrong:
        hint = "take the download in again; if it says the same, choose another record"
        raise LessonError(
            Problem(Place(INDEX), told(f"{name}, {record.fdc},", doubt), hint) for doubt in wrong
        )
    return tuple(f"{told(name, doubt)}: {way_out(doubt, record.fdc)}." for doubt in found)
