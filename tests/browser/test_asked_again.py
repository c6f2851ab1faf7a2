"""A question asked before and after, in a real Chromium: told only the second time."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    return f"{serve(built_site)}soup-night/index.html"


def asked(page: Page, stop: str) -> Locator:
    """The question of a stop, once it can be answered."""
    found = page.locator(f"#{stop}")
    expect(found.locator("[data-check]")).to_be_visible()
    return found


def answer(choice: Locator) -> Locator:
    """What is said of a choice."""
    choice.check()
    stop = choice.locator("xpath=ancestor::section[1]")
    stop.locator("[data-check]").click()
    return stop.get_by_role("status").first


@pytest.mark.parametrize("choice", [0, 1])
def test_before_it_is_kept_and_neither_right_nor_wrong(
    page: Page, address: str, choice: int
) -> None:
    page.goto(address)
    before = asked(page, "the-most")
    expect(answer(before.get_by_role("radio").nth(choice))).to_have_text(
        "Kept. We ask this again later."
    )
    expect(page.locator("li:has(> #the-most)")).to_have_attribute("data-done", "")
    page.reload()
    expect(asked(page, "the-most").get_by_role("radio").nth(choice)).to_be_checked()
    expect(page.locator("#the-most").get_by_role("status").first).to_be_empty()


def test_nothing_chosen_is_nothing_kept(page: Page, address: str) -> None:
    page.goto(address)
    before = asked(page, "the-most")
    before.get_by_role("button", name="Keep my answer").click()
    expect(before.get_by_role("status").first).to_contain_text("Choose or write")


def test_after_it_is_checked_like_any_other(page: Page, address: str) -> None:
    page.goto(address)
    after = asked(page, "the-most-again")
    right = after.locator("form").get_attribute("data-answer")
    for radio in after.get_by_role("radio").all():
        says = "Yes." if radio.get_attribute("value") == right else "Not yet."
        expect(answer(radio)).to_contain_text(says)
