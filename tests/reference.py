"""The published food records that lie beside the project on a machine that has them."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

FOLDER = Path(__file__).parents[2] / "shared" / "reference-data" / "usda_sr_legacy"


def rows(name: str) -> list[dict[str, str]]:
    """The rows of one table; the test is skipped, with the reason, where there is no such folder.

    Source: USDA FoodData Central, SR Legacy, April 2018; public domain.
    """
    file = FOLDER / name
    if not file.is_file():
        pytest.skip(f"the published records are not on this machine: {name} is missing")
    with file.open(encoding="utf-8", newline="") as text:
        return list(csv.DictReader(text))
