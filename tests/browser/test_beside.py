"""Beside the film stands that the place is kept, where it is; and what is for the adult is for the screen alone."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

LESSON = "river-walk/index.html"
FORBIDDEN = (
    """Storage.prototype.setItem = () => { throw new DOMException("", "QuotaExceededError"); };"""
)
KEYS = "Object.keys(localStorage).filter((key) => key.includes('probe'))"


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site) + LESSON


def test_a_place_is_promised_where_the_device_keeps_it(page: Page, address: str) -> None:
    page.goto(address)
    expect(page.locator("[data-place-kept]")).to_be_visible()
    assert page.evaluate(KEYS) == []


def test_nothing_is_promised_where_the_device_keeps_nothing(page: Page, address: str) -> None:
    page.add_init_script(FORBIDDEN)
    page.goto(address)
    page.locator("lesson-thread:defined").wait_for()
    expect(page.locator("[data-place-kept]")).to_be_hidden()


def test_nothing_is_promised_without_script(browser: Browser, address: str) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(address)
    expect(page.locator("[data-place-kept]")).to_be_hidden()
    expect(page.locator("p.beside").first).to_be_visible()
    page.locator("details.beside summary").click()
    expect(page.locator("details.beside li").first).to_be_visible()
    context.close()


def test_what_is_for_the_adult_beside_is_not_put_on_paper(page: Page, address: str) -> None:
    page.goto(address)
    page.locator("[data-place-kept]:not([hidden])").wait_for()
    page.emulate_media(media="print")
    beside = page.locator(".beside").all()
    assert len(beside) == 3
    for one in beside:
        expect(one).to_be_hidden()
