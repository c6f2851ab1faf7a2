"""A small number for each of millions of ids, at a byte each."""

from __future__ import annotations

_PAGE = 12  # bits of an id within one page


class Marks:
    """Numbers from 0 to 255 by id; 0 where none was set.

    Ids of FoodData Central lie close together, so pages of them are nearly full; a dictionary of
    two million would take two hundred megabytes.
    """

    def __init__(self) -> None:
        self._pages: dict[int, bytearray] = {}

    def __getitem__(self, id_: int) -> int:
        page = self._pages.get(id_ >> _PAGE)
        return page[id_ & ((1 << _PAGE) - 1)] if page is not None else 0

    def __setitem__(self, id_: int, mark: int) -> None:
        page = self._pages.get(id_ >> _PAGE)
        if page is None:
            page = self._pages[id_ >> _PAGE] = bytearray(1 << _PAGE)
        page[id_ & ((1 << _PAGE) - 1)] = mark
