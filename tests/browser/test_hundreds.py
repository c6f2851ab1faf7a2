"""Hundreds are laid in rows of five on a phone, so that ten and twelve are seen at once."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.browser.watched import OPEN_ALL

ROWS = """piles => piles.map(pile => {
  const rows = {};
  for (const block of pile.querySelectorAll('.hundred')) {
    const top = Math.round(block.getBoundingClientRect().top);
    rows[top] = (rows[top] ?? 0) + 1;
  }
  return Object.entries(rows).sort((one, other) => one[0] - other[0]).map(([, held]) => held);
}).filter(rows => rows.length)"""


def in_fives(rows: list[int]) -> bool:
    """Whether every row but the last holds five, and the last no more."""
    return set(rows[:-1]) <= {5} and rows[-1] <= 5


@pytest.mark.parametrize("width", [320, 390])
@pytest.mark.parametrize("lesson", ["soup-night", "garden-baskets"])
def test_hundreds_stand_in_rows_of_five_on_a_phone(
    page: Page, built_site: Path, serve: Callable[[Path], str], lesson: str, width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 844})
    page.goto(f"{serve(built_site)}{lesson}/index.html")
    page.evaluate(OPEN_ALL)
    page.locator("match-blocks .loose .hundred").first.wait_for()  # those to be matched by hand too
    piles = page.locator(".thread .blocks").evaluate_all(ROWS)
    assert max(sum(rows) for rows in piles) > 10
    assert [rows for rows in piles if not in_fives(rows)] == []
    assert page.evaluate("document.documentElement.scrollWidth") <= width
