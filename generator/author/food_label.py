"""A package's label as an entry of the library: no brand, no grams made up, and where it is from.

Titles of packages hold names of brands, so an entry takes none of them over; what it is called is
the educator's to say.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from fractions import Fraction

from generator.compute.label import label_value
from generator.model.food_record import FoodRecord
from generator.model.measure import Measure
from generator.problems import LessonError, Place, Problem

_FACTORS = {
    2047: "# energy by Atwater's general factors (nutrient 2047): the record states no other",
    2048: "# energy by Atwater's factors for this food (nutrient 2048): the record states no other",
}
_ENERGY = Measure.ENERGY


def refuse_label(record: FoodRecord, name: str) -> None:
    """Go on only where a package can become an entry.

    Args:
        record: any record; one that is no package is never refused here.
        name: the plain name the educator gives.

    Raises:
        LessonError: the package has no name yet, or its figures are for millilitres.
    """
    label = record.label
    if label is None:
        return
    place = Place("site_data/foods.yaml")
    if not name.strip():
        hint = f'give it one: python3 generator foods add {record.fdc} --name "Oat bar"'
        what = f"the package {record.fdc} needs a plain name of yours, without the brand"
        raise LessonError([Problem(place, what, hint)])
    if label.unit == "ml":
        what = (
            f"the figures of {record.fdc} are for 100 ml, and its label does not say what a "
            "milliliter weighs: no grams are made up, and nothing was added"
        )
        raise LessonError([Problem(place, what, f"write in the lesson {_own_value(record, name)}")])


def record_title(record: FoodRecord) -> str:
    """What an entry says it was made of: the record's title; of a package its shelf alone."""
    if record.label is None:
        return record.description
    return f"Package, {record.category}" if record.category else "Package"


def notes(record: FoodRecord) -> Iterator[str]:
    """Comments an entry carries: where its figures are other than they look."""
    if record.label is not None:
        yield "# figures from the label of a package, rounded there; brand left out"
    note = _FACTORS.get(record.nutrients.get(_ENERGY.value, 0))
    if note:
        yield note


def _own_value(record: FoodRecord, name: str) -> str:
    """The serving of the label as an item of a row, with its energy."""
    label, held = record.label, record.per_100g[_ENERGY.value]
    if label is None or held is None or not label.size:
        return f"{{name: {name}, value: …, source: …}} with what the label says"
    value = label_value(_ENERGY, Fraction(held) * Fraction(label.size) / 100).value
    said = f"{name}, {label.wording} ({label.size.normalize():f} ml)"
    shown = f"{value.normalize():f}"
    return f"{{name: {json.dumps(said, ensure_ascii=False)}, value: {shown}, source: {json.dumps(record.release)}}}"
