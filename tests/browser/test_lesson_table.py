"""The table of all lessons on paper: one sheet for the demo, ink on white, and more sheets of whole rows for more."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.printed_sheets import printed_sheets

MANY = """() => {
  const body = document.querySelector('.lesson-table tbody');
  const rows = [...body.rows];
  for (let times = 0; times < 4; times++) body.append(...rows.map(row => row.cloneNode(true)));
}"""
"""Thirty lessons in the place of six."""


@pytest.mark.parametrize("paper", ["A4", "Letter"])
@pytest.mark.parametrize("path", ["lessons.html", "es/lessons.html"])
def test_six_lessons_take_one_sheet(page: Page, built_site: Path, path: str, paper: str) -> None:
    page.goto((built_site / path).as_uri())
    (sheet,) = printed_sheets(page.pdf(format=paper))
    assert min(ink.letters for ink in sheet.inks if ink.letters) >= 12
    for ink in sheet.inks:
        assert not ink.colour or max(ink.colour) - min(ink.colour) < 0.03, ink


def test_more_lessons_take_as_many_sheets_as_they_need(page: Page, built_site: Path) -> None:
    page.goto((built_site / "lessons.html").as_uri())
    page.evaluate(MANY)
    sheets = printed_sheets(page.pdf(format="Letter"))
    assert 4 <= len(sheets) <= 6
    for sheet in sheets[:-1]:
        assert sheet.filled > 0.8


def test_on_a_phone_a_lesson_is_read_from_top_to_bottom(page: Page, built_site: Path) -> None:
    page.set_viewport_size({"width": 320, "height": 800})
    page.goto((built_site / "lessons.html").as_uri())
    row = page.locator("tbody tr").first
    tops = [cell.bounding_box() for cell in row.locator("th, td").all()]
    assert [box["y"] for box in tops if box] == sorted(box["y"] for box in tops if box)
    assert {box["x"] for box in tops if box} == {tops[0]["x"] if tops[0] else 0}
