"""Questions that can be checked, in a real Chromium: right, not yet, kept, cleared, by keyboard."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect


@pytest.fixture
def address(closing_site: Path, serve: Callable[[Path], str]) -> str:
    return f"{serve(closing_site)}two-lunches/index.html"


def asked(page: Page, stop: str) -> Locator:
    """The question of a stop, once it can be checked."""
    found = page.locator(f"#{stop}")
    expect(found.locator("[data-check]")).to_be_visible()
    return found


def test_a_number_is_read_kindly_and_its_stop_is_done(page: Page, address: str) -> None:
    page.goto(address)
    parting = asked(page, "parting")
    entry = parting.get_by_role("textbox", name="Your answer")
    entry.press("Enter")
    expect(parting.get_by_role("status").first).to_contain_text("Choose or write your answer")
    entry.fill("610")
    entry.press("Enter")
    expect(parting.get_by_role("status").first).to_contain_text("Not yet.")
    expect(page.locator("li:has(> #parting)")).not_to_have_attribute("data-done", "")
    entry.fill("620 kcal")
    entry.press("Enter")
    expect(parting.get_by_role("status").first).to_have_text("Yes. The answer: 620 kcal.")
    expect(page.locator("li:has(> #parting)")).to_have_attribute("data-done", "")


def test_a_choice_is_checked_kept_and_cleared(page: Page, address: str) -> None:
    page.goto(address)
    guess = asked(page, "guess")
    guess.get_by_role("radio", name="From home").check()
    guess.get_by_role("button", name="Check my choice").click()
    expect(guess.get_by_role("status").first).to_contain_text(
        "choose again, or go on"
    )  # no numbers yet
    guess.get_by_role("radio", name="From home").press("ArrowUp")
    guess.get_by_role("button", name="Check my choice").click()
    expect(guess.get_by_role("status").first).to_have_text("Yes. The answer: From town.")
    page.reload()
    expect(asked(page, "guess").get_by_role("radio", name="From town")).to_be_checked()
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect(guess.get_by_role("radio", name="From town")).not_to_be_checked()


def test_an_estimate_is_laid_on_the_line_and_compared_as_a_distance(
    page: Page, address: str
) -> None:
    page.goto(address)
    asked(page, "parting")
    estimate = page.locator("estimate-line")
    estimate.get_by_role("radio", name="300").check()
    said, found = estimate.locator("[data-said]"), estimate.locator("[data-found]")
    expect(said).to_have_attribute("transform", "translate(175.2 0)")  # 24 + 252 × 300 ÷ 500
    expect(found).to_be_hidden()
    expect(estimate.get_by_role("status")).to_be_empty()
    row = page.locator("gap-calculator form").first
    row.get_by_role("textbox", name="Gap").fill("320")
    row.get_by_role("textbox", name="How many tens?").fill("32")
    row.get_by_role("textbox", name="How many tens?").press("Enter")
    expect(estimate.get_by_role("status")).to_have_text(
        "You said 300. The gap is 320. They are 20 apart."
    )
    expect(found).to_have_attribute("transform", "translate(185.28 0)")  # 24 + 252 × 320 ÷ 500
    page.reload()
    expect(estimate.get_by_role("status")).to_contain_text("20 apart")
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect(said).to_be_hidden()
    expect(estimate.get_by_role("status")).to_be_empty()


def test_without_a_script_the_answer_waits_behind_its_summary(
    browser: Browser, address: str
) -> None:
    page = browser.new_page(java_script_enabled=False)
    page.goto(address)
    parting = page.locator("#parting")
    expect(parting.locator("[data-check]")).to_be_hidden()
    parting.locator("summary", has_text="Show the answer").click()
    expect(parting.get_by_text("The answer: 620 kcal.")).to_be_visible()
    page.close()


def test_nothing_keeps_anyone_out(
    page: Page, address: str, axe: Callable[[Page], list[str]]
) -> None:
    page.set_viewport_size({"width": 320, "height": 700})
    page.goto(address)
    asked(page, "parting")
    assert axe(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
