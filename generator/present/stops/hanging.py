"""The gaps of a comparison as they hang, one by one, while they are found."""

from __future__ import annotations

from generator.compute.result import Comparison, LessonResult
from generator.present.pictures.plums.drawing import FLAT, SIDES, Place, drawn
from generator.present.pictures.plums.hung import hung
from generator.present.pictures.plums.shapes import length
from generator.present.views.comparison import HangingView


def hanging_view(comparison: Comparison, result: LessonResult) -> HangingView:
    """The comparison's own rows, on the scale of the whole lesson."""
    rows = tuple(row for row in hung(result) if row.stop == comparison.stop.id)
    drawing = drawn(rows, FLAT)
    return HangingView(
        knots=range(len(rows)),
        drops=" ".join(_drop(place) for place in drawing.places),
        size="" if drawing.size == 1 else length(drawing.size),
    )


def _drop(place: Place) -> str:
    """``48.5first``: how long a thread is, and whose side its leaf points to."""
    return length(place.drop) + ("" if place.side is None else SIDES[place.side])
