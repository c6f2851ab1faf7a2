"""How many bytes the first view of every lesson needs, beside the limit of one first flight."""

from __future__ import annotations

from collections.abc import Iterator

from bench.measuring.demo import built_demo
from bench.measuring.files import first_views
from bench.measuring.row import Case, NothingMeasuredError, Row, row


def rows(case: Case) -> Iterator[Row]:
    """One row for each lesson page in each language."""
    found = list(first_views(built_demo()))
    if not found:
        raise NothingMeasuredError("the site has no lesson page")
    for name, size in found[: 1 if case.small else None]:
        yield row("first_view", size, name)
