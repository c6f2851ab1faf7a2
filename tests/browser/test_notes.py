"""The teaching notes on a phone and on paper."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

NOTES = ("river-walk/notes.html", "es/river-walk/notes.html", "two-days/notes.html")


@pytest.mark.parametrize("path", NOTES)
def test_they_fit_a_phone_with_every_box_open(
    built_site: Path, serve: Callable[[Path], str], page: Page, path: str
) -> None:
    page.set_viewport_size({"width": 320, "height": 800})
    page.goto(f"{serve(built_site)}{path}")
    page.evaluate("document.querySelectorAll('details').forEach((box) => { box.open = true; })")
    assert page.evaluate("document.documentElement.scrollWidth") <= 320


def test_paper_shows_likely_answers_and_leaves_the_computation_out(
    built_site: Path, serve: Callable[[Path], str], page: Page
) -> None:
    """A sheet lies where children read it; what is for adults alone stays shut."""
    page.goto(f"{serve(built_site)}{NOTES[0]}")
    page.emulate_media(media="print")
    expect(page.get_by_text("Say next: Not yet. Taking away 0 changes nothing.")).to_be_visible()
    seen = page.locator(".truth > p").first
    assert not seen.evaluate("(line) => line.checkVisibility({ contentVisibilityAuto: true })")
    assert not page.locator(".truth").evaluate("(box) => box.open")
