"""Three numbers of a subtraction, digit under digit, for the squares on the worksheet."""

from __future__ import annotations

from generator.present.views.amounts import ColumnView

_WHOLE = (
    "place_ones",
    "place_tens",
    "place_hundreds",
    "place_thousands",
    "place_ten_thousands",
    "place_hundred_thousands",
)
_PARTS = ("place_tenths", "place_hundredths")
PLACES = (*_WHOLE, *_PARTS)
"""Keys of what the heads of the columns say."""


def columns(larger: str, smaller: str, gap: str) -> tuple[ColumnView, ...]:
    """Place-value columns, from the left.

    Args:
        larger: digits and a point, as are ``smaller`` and ``gap``; none is negative and none
            has more than six digits before the point or two after it.
    """
    numbers = [number.partition(".")[::2] for number in (larger, smaller, gap)]
    wide = max(len(whole) for whole, _ in numbers)
    deep = max(len(part) for _, part in numbers)
    names = (*reversed(_WHOLE[:wide]), *_PARTS[:deep])
    rows = [whole.rjust(wide) + part.ljust(deep, "0") for whole, part in numbers]
    return tuple(
        ColumnView(place, top.strip(), bottom.strip(), left.strip(), index == wide)
        for index, (place, top, bottom, left) in enumerate(zip(names, *rows, strict=True))
    )
