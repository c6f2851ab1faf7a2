"""A row along a number line: the hops are those of counting up, and blocks or line is the learner's choice."""

from __future__ import annotations

import itertools
import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

Serve = Callable[[Path], str]
LESSON = "river-walk"
LINE = "details[data-working] .line"  # a row that is worked shows its line whatever is chosen
OPEN = "document.querySelectorAll('[data-working]').forEach(each => each.open = true)"


@pytest.fixture
def address(built_site: Path, serve: Serve) -> str:
    """A lesson of the demo."""
    return f"{serve(built_site)}{LESSON}/index.html"


def number(text: str) -> float:
    return float(text.replace(",", "").lstrip("+"))


def test_the_line_leads_from_the_smaller_to_the_larger_number(page: Page, address: str) -> None:
    page.goto(address)
    rows = page.locator("form.gap-row:has(details[data-working] .line)").all()
    assert rows
    for row in rows:
        texts = row.locator("details[data-working] .line text").all_text_contents()
        hops = [number(text) for text in texts if text.startswith("+")]
        stops = [number(text) for text in texts if not text.startswith("+")]
        sides = [float(row.get_attribute(f"data-{side}") or "") for side in ("first", "second")]
        assert [stops[0], stops[-1]] == sorted(sides)
        assert [end - start for start, end in itertools.pairwise(stops)] == hops
        said = row.locator("details[data-working] .line").get_attribute("aria-label") or ""
        assert all(text.lstrip("+") in said for text in texts)


def test_blocks_or_line_is_chosen_once_for_all_rows_and_lessons(page: Page, address: str) -> None:
    page.goto(address)
    page.evaluate(OPEN)
    line, left = page.locator(LINE), page.locator("details[data-working] figure.left")
    expect(line.first).not_to_be_visible()
    expect(left.first).to_be_visible()
    page.get_by_role("button", name="As a number line").first.press("Enter")
    for each in line.all():
        expect(each).to_be_visible()
    expect(left.first).not_to_be_visible()
    page.goto(address.replace(LESSON, "soup-night"))
    page.evaluate(OPEN)
    expect(line.first).to_be_visible()
    page.get_by_role("button", name="In blocks").first.click()
    expect(left.first).to_be_visible()


def test_without_script_both_are_there(address: str, browser: Browser) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(address)
    working = page.locator("[data-working]:has(.line)").first
    working.locator("> summary").click()
    expect(working.locator(".line")).to_be_visible()
    expect(working.locator("figure.left")).to_be_visible()
    expect(working.get_by_role("button")).to_have_count(0)
    context.close()


@pytest.mark.parametrize("width", [320, 1280])
def test_numbers_can_be_read_and_do_not_touch(page: Page, address: str, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(address)
    page.evaluate(OPEN)
    page.get_by_role("button", name="As a number line").first.click()
    for line in page.locator(".line").all():
        boxes = [text.bounding_box() for text in line.locator("text").all()]
        known = [box for box in boxes if box]
        assert len(known) == len(boxes)
        assert min(box["height"] for box in known) >= 12
        edges = sorted((round(box["y"]), box["x"], box["x"] + box["width"]) for box in known)
        for (height, _, right), (other, left, _) in itertools.pairwise(edges):
            assert height != other or left > right
        assert re.search(r"\d", line.get_attribute("aria-label") or "")
