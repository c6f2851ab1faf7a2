"""A row's blocks are matched by hand, by tap, drag or keys, and what is left is the gap."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

SIZES = {"1000": 100.0, "100": 10.0, "10": 1.0, "5": 0.5, "1": 0.1}


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    """A lesson of the demo."""
    return f"{serve(built_site)}river-walk/index.html"


def opened(page: Page, address: str) -> Locator:
    """The first row with blocks to match, opened."""
    page.goto(address)
    row = page.locator("form:has(match-blocks)").first
    row.get_by_text("Blocks", exact=True).click()
    return row


def left(row: Locator, side: str) -> float:
    """What stands unmatched on a side."""
    blocks = row.locator(f"match-blocks .{side} .loose")
    return sum(SIZES[size] for size in blocks.evaluate_all("all => all.map(e => e.dataset.size)"))


def expect_the_gap(row: Locator) -> None:
    numbers = [float(row.get_attribute(f"data-{side}") or "") for side in ("first", "second")]
    expect(row.locator("match-blocks [role=status]")).to_contain_text("What is left is the gap.")
    rest = sorted(left(row, side) for side in ("first", "second"))
    assert rest == [0, max(numbers) - min(numbers)]
    assert str(int(rest[1])) not in row.locator("match-blocks").inner_text()


def test_by_keys_until_the_gap_is_left(page: Page, address: str) -> None:
    row = opened(page, address)
    for name in ("hundred", "ten"):
        button = row.get_by_role("button", name=f"Match a {name}")
        button.focus()
        for _ in range(45):
            if row.get_by_text("What is left is the gap.", exact=False).count() > 1:
                break
            page.keyboard.press("Enter")
        expect(button).to_be_focused()
    expect_the_gap(row)
    piles = row.locator("match-blocks [role=img]")
    assert "no blocks" in [pile.get_attribute("aria-label") for pile in piles.all()]
    row.get_by_role("button", name="Start over").press("Enter")
    expect(row.get_by_role("button", name="Start over")).to_be_focused()
    assert left(row, "first") == float(row.get_attribute("data-first") or "")


def test_by_taps_and_by_dragging_across(page: Page, address: str) -> None:
    row = opened(page, address)
    numbers = {side: float(row.get_attribute(f"data-{side}") or "") for side in ("first", "second")}
    smaller, larger = sorted(numbers, key=lambda side: numbers[side])
    block = row.locator(f"match-blocks .{smaller} .loose").first
    block.click()
    after_tap = left(row, smaller)
    assert after_tap == numbers[smaller] - 10
    block.drag_to(row.locator(f"match-blocks .{larger} .loose").first)
    assert left(row, smaller) == after_tap - 10
    start, away = block.bounding_box(), row.locator("match-blocks .buttons").bounding_box()
    assert start
    assert away
    page.mouse.move(start["x"] + 2, start["y"] + 2)
    page.mouse.down()
    page.mouse.move(away["x"] + away["width"] - 2, away["y"] + 200, steps=4)
    page.mouse.up()
    assert left(row, smaller) == after_tap - 10, "let go elsewhere, it goes back"
    assert numbers[larger] - left(row, larger) == numbers[smaller] - left(row, smaller)


@pytest.mark.parametrize("width", [320, 390])
def test_it_fits_and_keeps_nobody_out(
    page: Page, address: str, axe: Callable[[Page], list[str]], width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 700})
    opened(page, address)
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    assert axe(page) == []


def test_without_script_both_pictures_are_there(address: str, browser: Browser) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    row = opened(page, address)
    expect(row.locator("match-blocks figure")).to_have_count(2)
    expect(row.get_by_text("The same on both sides")).to_be_visible()
    context.close()
