"""The chart to explore: nothing of it before the click, only our own host after, and no loss when it fails."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Page, expect

from tests.browser.still_page import ROOT, write_page

PLOTLY = ROOT / "theme" / "vendor" / "plotly" / "plotly-bars.min.js"


@pytest.fixture
def asked(page: Page) -> list[str]:
    """Names of all files the page asks for, other hosts with their names (the page fixture refuses those)."""
    names: list[str] = []
    page.on("request", lambda request: names.append(urlsplit(request.url).path.rpartition("/")[2]))
    return names


def open_page(folder: Path, serve: Callable[[Path], str], page: Page) -> None:
    write_page(folder)
    page.goto(serve(folder))


def test_it_loads_on_request_only_and_keeps_the_table(
    tmp_path: Path, serve: Callable[[Path], str], page: Page, asked: list[str]
) -> None:
    shutil.copy(PLOTLY, tmp_path / "draw.js")
    open_page(tmp_path, serve, page)
    expect(page.get_by_role("button", name="Explore the chart")).to_be_visible()
    assert {"draw.js", "figure.json"}.isdisjoint(asked)
    page.get_by_role("button", name="Explore the chart").press("Enter")
    drawn = page.get_by_role("img", name="Energy on both sides")
    expect(drawn).to_be_focused()
    expect(drawn.locator(".bars .point")).to_have_count(2)
    expect(page.get_by_role("cell", name="230 kcal")).to_be_visible()
    expect(page.get_by_role("button", name="Explore the chart")).to_have_count(0)
    expect(page.locator(".modebar-container a")).to_have_count(0)
    expect(page.locator("gap-chart [role=status]")).to_have_text("It shows both.")
    assert {"draw.js", "figure.json"} <= set(asked)


@pytest.mark.parametrize("missing", ["draw.js", "figure.json"])
def test_what_does_not_come_is_said_and_can_be_asked_for_again(
    tmp_path: Path, serve: Callable[[Path], str], page: Page, complaints: list[str], missing: str
) -> None:
    shutil.copy(PLOTLY, tmp_path / "draw.js")
    open_page(tmp_path, serve, page)
    (tmp_path / missing).rename(tmp_path / "away")
    button = page.get_by_role("button", name="Explore the chart")
    button.press("Enter")
    expect(page.locator("gap-chart [role=status]")).to_have_text(
        "The chart could not load. The table has the same numbers."
    )
    expect(button).to_be_focused()
    expect(page.get_by_role("cell", name="230 kcal")).to_be_visible()
    assert all(missing in complaint for complaint in complaints)
    complaints.clear()
    (tmp_path / "away").rename(tmp_path / missing)
    button.press("Enter")
    expect(page.get_by_role("img", name="Energy on both sides")).to_be_focused()


def test_another_way_to_look_is_chosen_by_keyboard_and_told(
    tmp_path: Path, serve: Callable[[Path], str], page: Page
) -> None:
    shutil.copy(PLOTLY, tmp_path / "draw.js")
    open_page(tmp_path, serve, page)
    page.get_by_role("button", name="Explore the chart").press("Enter")
    expect(page.locator(".bars .point")).to_have_count(2)
    page.get_by_role("radio", name="both").press("ArrowDown")
    expect(page.get_by_role("radio", name="the gap")).to_be_focused()
    expect(page.locator(".bars .point")).to_have_count(1)
    expect(page.locator("gap-chart [role=status]")).to_have_text("It shows the gap.")
    expect(page.get_by_role("img", name="the gap")).to_have_count(1)


def test_it_wears_the_colours_and_the_typeface_of_the_page(
    tmp_path: Path, serve: Callable[[Path], str], page: Page
) -> None:
    shutil.copy(PLOTLY, tmp_path / "draw.js")
    open_page(tmp_path, serve, page)
    page.evaluate("document.documentElement.style.setProperty('--slate', '#123456')")
    page.evaluate("document.body.style.fontFamily = 'monospace'")
    page.get_by_role("button", name="Explore the chart").press("Enter")
    expect(page.locator(".bars .point path").first).to_have_css("fill", "rgb(18, 52, 86)")
    expect(page.locator(".xtick text").first).to_have_css("font-family", "monospace")
    page.evaluate("document.documentElement.style.setProperty('--slate', '#654321')")
    page.emulate_media(color_scheme="dark")
    expect(page.locator(".bars .point path").first).to_have_css("fill", "rgb(101, 67, 33)")
