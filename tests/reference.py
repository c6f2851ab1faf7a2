"""The published records of the foods of the library, from the copy beside the tests."""

from __future__ import annotations

import csv

from tests.sr_legacy_copy import COPY


def rows(name: str) -> list[dict[str, str]]:
    """The rows of one table, of the foods of the library alone.

    Source: USDA FoodData Central, SR Legacy, April 2018; public domain.
    """
    with (COPY / name).open(encoding="utf-8", newline="") as text:
        return list(csv.DictReader(text))
