"""From an official download to the foods of the library: the steps of the food commands."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from generator.author.doubtful_records import figures_questioned, impossible_records
from generator.author.food_entry import FoodEntryText, Wishes, food_entry
from generator.author.food_label import refuse_label
from generator.author.reference_files import renew_schema
from generator.model.food_record import Imported
from generator.read.fooddata.adding import record_to_add, shares_release
from generator.read.fooddata.compare import Comparison, compare
from generator.read.fooddata.importing import import_foods
from generator.read.fooddata.index import opened_index
from generator.read.library import read_library
from generator.write.foods_file import change_foods, with_entry
from generator.write.foods_values import Addition, Edit, with_values


def import_download(
    root: Path, file: Path, progress: Callable[[int, int], None]
) -> tuple[Imported, ...]:
    """Read a FoodData Central CSV zip into the index of foods on this computer.

    Raises:
        LessonError: with what is wrong with the zip; the old index stays.
    """
    return import_foods(root, file, progress)


def impossible(root: Path, imported: Imported) -> tuple[str, ...]:
    """Records of what was imported that no food can be, a clause each; none of them can be added."""
    with opened_index(root) as index:
        return tuple(impossible_records(index, imported))


def add_food(root: Path, number: str, wishes: Wishes) -> FoodEntryText:
    """Write a record of the index into ``site_data/foods.yaml``; returns the entry.

    Args:
        root: folder of the site.
        number: an FDC id, a food code, or a GTIN.
        wishes: what the educator decides.

    Raises:
        LessonError: it cannot be added; the file stays as it was.
    """
    library = read_library(root)
    with opened_index(root) as index:
        record = record_to_add(library, index, number, wishes.id, wishes.group)
    refuse_label(record, wishes.name)
    questions = figures_questioned(record)
    entry = food_entry(
        record,
        library.foods,
        wishes,
        own_release=not shares_release(library, record),
    )
    change_foods(
        root, lambda text: with_entry(text, entry.id, entry.group, entry.lines), read_library
    )
    renew_schema(root)
    return replace(entry, left=(*questions, *entry.left))


def refresh_foods(root: Path) -> Comparison:
    """Write what the records say differently, or more, into ``site_data/foods.yaml``; returns it.

    Raises:
        LessonError: there is no index, or the file would not be right; it stays as it was.
    """
    library = read_library(root)
    with opened_index(root) as index:
        compared = compare(root, library, index)
    edits = [
        Edit(change.place.line, change.place.column, change.old, change.new)
        for change in compared.changes
    ]
    additions = [
        Addition(
            one.place.line,
            one.place.column,
            one.last,
            one.figures,
            (one.opening.line, one.opening.column),
        )
        for one in compared.missing
    ]
    if edits or additions:
        change_foods(root, lambda text: with_values(text, edits, additions), read_library)
    return compared
