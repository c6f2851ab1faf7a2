"""Whether a record may become an entry of the library, before anything is written."""

from __future__ import annotations

import re
import sqlite3

from generator.model.food_record import FoodRecord
from generator.model.library import Library
from generator.model.wording import FALLBACK
from generator.problems import LessonError, Place, Problem
from generator.read.explain import did_you_mean
from generator.read.fooddata.gtin import is_number, misread
from generator.read.fooddata.index import INDEX, called
from generator.read.library import FOODS

_ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")


def record_to_add(
    library: Library, index: sqlite3.Connection, number: str, id_: str, group: str
) -> FoodRecord:
    """The record, when neither it nor the wished id and group stand in the way.

    Args:
        library: what there is already.
        index: as ``opened_index`` gives it.
        number: an FDC id, a food code, or a GTIN.
        id_: wished for, or empty.
        group: wished for, or empty.

    Raises:
        LessonError: with every reason why not.
    """
    records = called(index, number) if is_number(number) else ()
    found = records[0] if len(records) == 1 else None
    problems: list[Problem] = []

    def refuse(what: str, hint: str, path: str = FOODS) -> None:
        problems.append(Problem(Place(path), what, hint))

    if not records:
        hint = 'look for its number with: python3 generator foods find "black beans"'
        if misread(number):
            hint = "read the number again: its last digit does not fit the others"
        refuse(f"no record {number} is in the index of foods", hint, INDEX)
    elif found is None:
        either = " or ".join(str(one.fdc) for one in records)
        refuse(f"{number} is the number of several foods", f"give the FDC id: {either}", INDEX)
    for food in library.foods.values():
        if found is not None and food.entry.fdc == found.fdc:
            amount = food.entry.portions[0].name(FALLBACK).words
            hint = f"write {{food: {food.id}, amount: {amount}}}"
            if food.entry.raw:
                hint = "it is raw and eaten only cooked: look for a cooked record"
            refuse(f"the record {found.fdc} is in your library already, as `{food.id}`", hint)
    if id_ in library.foods:
        refuse(f"`{id_}` is the id of another food", "choose another with --id")
    if id_ and not _ID.fullmatch(id_):
        hint = "use small letters, digits and single hyphens, such as `black-beans`"
        refuse(f"the id cannot be `{id_}`", hint)
    groups = sorted({food.entry.group for food in library.foods.values()})
    if group and group not in groups:
        refuse(f"`{group}` is no group of the library", did_you_mean(group, groups))
    if problems or found is None:
        raise LessonError(problems)
    return found


def shares_release(library: Library, found: FoodRecord) -> bool:
    """Whether the release the file opens with is the record's; else the entry names its own.

    SR Legacy is final: April 2018 by its own name, published a year later in FoodData Central.
    """
    kind = found.release.rpartition(", ")[0]
    for food in library.foods.values():
        if food.entry.release is None:
            same = food.release.rpartition(", ")[0] == kind
            return food.release == found.release or (same and kind.endswith("SR Legacy"))
    return False
