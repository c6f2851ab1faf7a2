"""What may stand in what: lists and tables of a PDF's structure (ISO 32000-1, 14.8.4.3, from memory, status M)."""

from __future__ import annotations

from collections.abc import Iterator

from tests.outside.pdf_parts import Opened, Part

_INSIDE = {
    "L": {"Caption", "L", "LI"},
    "LI": {"Lbl", "LBody"},
    "Table": {"Caption", "THead", "TBody", "TFoot", "TR"},
    "THead": {"TR"},
    "TBody": {"TR"},
    "TFoot": {"TR"},
    "TR": {"TH", "TD"},
    "TOC": {"Caption", "TOC", "TOCI"},
    "TOCI": {"Lbl", "Reference", "NonStruct", "P", "TOC"},
}
_WITHIN = {
    "LI": {"L"},
    "LBody": {"LI"},
    "THead": {"Table"},
    "TBody": {"Table"},
    "TFoot": {"Table"},
    "TR": {"Table", "THead", "TBody", "TFoot"},
    "TH": {"TR"},
    "TD": {"TR"},
    "TOCI": {"TOC"},
}


def of_nesting(file: Opened) -> Iterator[str]:
    """What stands where it may not, rows that are not alike, and cells that no head tells of."""
    for part in file.parts:
        yield from _placed(part)
        if part.kind == "Table":
            yield from _rows(part)
            yield from _heads(part)


def _placed(part: Part) -> Iterator[str]:
    point = "09-005" if part.kind in {"L", "LI", "LBody"} else "09-004"
    may = _INSIDE.get(part.kind)
    for below in part.parts if may else ():
        if may and below.kind not in may:
            yield f"{point}: {below.kind} stands in {part.kind}"
    above = part.parent.kind if part.parent else "the whole"
    if part.kind in _WITHIN and above not in _WITHIN[part.kind]:
        yield f"{point}: {part.kind} stands in {above}"
    if may and part.marks:
        yield f"{point}: {part.kind} has content of its own"


def _rows(table: Part) -> Iterator[str]:
    """Every row fills as many columns as the first, cells that reach over rows counted (15-004 and 7.5)."""
    reaching: list[int] = []
    wide: int | None = None
    for row in (part for part in table.all() if part.kind == "TR"):
        taken = sum(1 for left in reaching if left > 0)
        cells = [(one.attribute("/ColSpan", 1), one.attribute("/RowSpan", 1)) for one in row.parts]
        columns = taken + sum(across for across, _ in cells)
        wide = columns if wide is None else wide
        if columns != wide:
            yield f"7.5: a row of {columns} columns in a table of {wide}"
        reaching = [left - 1 for left in reaching if left > 1]
        reaching += [down - 1 for across, down in cells for _ in range(across) if down > 1]


def _heads(table: Part) -> Iterator[str]:
    heads = {str(part.held["/ID"]): part for part in table.all() if "/ID" in part.held}
    scoped = [part for part in table.all() if part.kind == "TH" and part.attribute("/Scope")]
    for part in table.all():
        if part.kind == "TH" and not part.attribute("/Scope") and not part.attribute("/Headers"):
            yield "15-003: a head of a table does not say of what"
        if part.kind == "TD":
            named = [str(one) for one in part.attribute("/Headers", [])]
            if any(one not in heads or heads[one].kind != "TH" for one in named):
                yield f"15-003: a cell names a head that is none: {named}"
            if not named and not scoped:
                yield "15-003: a cell has no head"
