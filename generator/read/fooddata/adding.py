"""Whether a record may become an entry of the library, before anything is written."""

from __future__ import annotations

import re
import sqlite3

from generator.model.food_record import FoodRecord
from generator.model.library import Library
from generator.model.wording import FALLBACK
from generator.problems import LessonError, Place, Problem
from generator.read.explain import did_you_mean
from generator.read.fooddata.index import INDEX, record
from generator.read.library import FOODS

_ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")


def record_to_add(
    library: Library, index: sqlite3.Connection, fdc: int, id_: str, group: str
) -> FoodRecord:
    """The record, when neither it nor the wished id and group stand in the way.

    Raises:
        LessonError: with every reason why not.
    """
    found = record(index, fdc)
    problems: list[Problem] = []

    def refuse(what: str, hint: str, path: str = FOODS) -> None:
        problems.append(Problem(Place(path), what, hint))

    if found is None:
        hint = 'look for its number with: python3 generator foods find "black beans"'
        refuse(f"no record {fdc} is in the index of foods", hint, INDEX)
    for food in library.foods.values():
        if food.entry.fdc == fdc:
            hint = (
                f"write {{food: {food.id}, amount: {food.entry.portions[0].name(FALLBACK).words}}}"
            )
            refuse(f"the record {fdc} is in your library already, as `{food.id}`", hint)
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
