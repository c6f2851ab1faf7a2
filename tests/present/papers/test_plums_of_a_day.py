"""The three plums to choose from where a worksheet has a day: one hangs to the left, one straight, one to the right."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from typing import Any

from generator.author.papers import papers_of
from generator.present.papers.paper import Size
from tests.outside.pdf_parts import opened
from tests.outside.pictures import pictures
from tests.project import ROOT

SAYS = "Three hollow plums on threads, one to the left, one straight, one to the right."
DOTS = 144
SCALE = DOTS / 72
"""Dots a point."""


def test_each_hangs_its_own_way() -> None:
    made = papers_of(ROOT, ["two-days"], [Size.A4])
    sheet = next(one.content for one in made if one.path.endswith("worksheet-a4.pdf"))
    found = list(drawn(sheet))
    assert len(found) == 2  # two days
    for picture in found:
        low = (picture[int(0.6 * len(picture)) :] < 200).any(axis=0)  # where the plums are
        begins = [at for at, (before, dark) in enumerate(pairwise(low)) if dark and not before]
        ends = [at for at, (before, dark) in enumerate(pairwise(low)) if before and not dark]
        assert len(begins) == len(ends) == 3
        assert abs(begins[0] + ends[-1] - len(low)) <= 2 * SCALE, "as far to either side"
        assert abs(begins[1] + ends[1] - len(low)) <= 2 * SCALE, "in the middle"


def drawn(pdf: bytes) -> Iterator[Any]:
    """Each picture of three plums, in greys, as rows of bytes."""
    file, sheets = opened(pdf), pictures(pdf, DOTS)
    numbers = [page.indirect_reference.idnum for page, _ in file.pages if page.indirect_reference]
    for part in file.parts:
        if part.kind == "Figure" and part.held.get("/Alt") == SAYS:
            [(page, _)] = part.marks
            sheet = sheets[numbers.index(page)]
            left, low, right, high = (
                round(SCALE * float(edge)) for edge in part.attribute("/BBox")
            )
            yield sheet[len(sheet) - high : len(sheet) - low, left:right].squeeze()
