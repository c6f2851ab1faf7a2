"""How many kilobytes a lesson takes that is kept for days without internet, its film among them."""

from __future__ import annotations

import json
from collections.abc import Iterator

from bench.measuring.demo import built_demo
from bench.measuring.row import Case, NothingMeasuredError, Row, row


def rows(case: Case) -> Iterator[Row]:
    """One row for each lesson in each language; what comes only when asked for is left out."""
    site = built_demo()
    lists = sorted(site.rglob("keep.json"))
    if not lists:
        raise NothingMeasuredError("the site has no lesson that can be kept")
    for file in lists[: 1 if case.small else None]:
        kept = json.loads(file.read_text("utf-8"))["files"]
        size = sum(int(one["bytes"]) for one in kept)
        yield row("kept", size / 1000, file.parent.relative_to(site).as_posix())
