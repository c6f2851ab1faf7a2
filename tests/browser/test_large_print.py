"""Large print: chosen by a link, without a script, 18 pt and up, nothing beside the paper."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.test_paper import RUNS_OVER, WITH_TEXT
from tests.printed_sheets import printed_sheets

SIZES = f"{WITH_TEXT}.filter(e => e.checkVisibility()).map(e => parseFloat(getComputedStyle(e).fontSize) * e.currentCSSZoom * 72 / 96)"


@pytest.mark.parametrize("name", ["worksheet", "answers", "cards"])
@pytest.mark.parametrize("lesson", ["garden-baskets", "two-days", "es/soup-night"])
def test_every_letter_is_eighteen_points_and_on_the_paper(
    page: Page, built_site: Path, lesson: str, name: str
) -> None:
    """18 pt: common practice for large print, no source."""
    page.set_viewport_size({"width": 718, "height": 1000})  # between the margins of A4
    page.goto(f"{(built_site / lesson / name).as_uri()}.html#large-print")
    page.emulate_media(media="print")
    assert min(page.evaluate(SIZES)) >= 18
    assert page.evaluate(RUNS_OVER) == []


@pytest.mark.parametrize("paper", ["A4", "Letter"])
@pytest.mark.parametrize("name", ["worksheet", "answers", "cards"])
@pytest.mark.parametrize("lesson", ["two-days", "es/garden-baskets"])
def test_what_is_printed_is_as_large_and_inside_the_margins(
    page: Page, built_site: Path, lesson: str, name: str, paper: str
) -> None:
    """Also the letters of pictures, by what stands in the document itself."""
    page.goto(f"{(built_site / lesson / name).as_uri()}.html#large-print")
    for sheet in printed_sheets(page.pdf(format=paper)):
        assert min(ink.letters for ink in sheet.inks if ink.letters) >= 18
        assert min(ink.box[0] for ink in sheet.inks) > 9
        assert max(ink.box[2] for ink in sheet.inks) < sheet.width - 9


def test_it_is_chosen_and_left_by_a_link_without_javascript(
    browser: Browser, built_site: Path
) -> None:
    with browser.new_context(java_script_enabled=False) as context:
        page = context.new_page()
        page.goto((built_site / "river-walk/worksheet.html").as_uri())
        wide = width(page)
        page.get_by_role("link", name="In large print").click()
        assert not page.get_by_role("link", name="In large print").is_visible()
        assert width(page) == pytest.approx(1.5 * wide, rel=0.01)
        page.get_by_role("link", name="In usual print").click()
        assert width(page) == wide


def width(page: Page) -> float:
    """Of the place for the code, in pixels of the screen."""
    box = page.locator("svg.qr").first.bounding_box()
    assert box
    return box["width"]


def test_the_choice_is_reached_on_a_phone(
    page: Page, serve: Callable[[Path], str], built_site: Path
) -> None:
    page.set_viewport_size({"width": 320, "height": 640})
    page.goto(f"{serve(built_site)}garden-baskets/worksheet.html#large-print")
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    assert page.get_by_role("link", name="In usual print").is_visible()
