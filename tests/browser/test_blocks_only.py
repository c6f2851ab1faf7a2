"""One switch leaves out what foods hold, on the screen and on paper, and keeps blocks, tens and moves."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

OF_FOODS = re.compile(
    r"\b(kcal|kilocalories|mg|milligrams|kilocalorías|miligramos)\b|\d\s?(g|grams|gramos)\b"
)
"""Units, and what is said in them. What the film says, read along, is left alone and said so."""


@pytest.fixture
def site(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def switch_on(page: Page, address: str, name: str = "Blocks only") -> None:
    page.goto(address)
    page.locator("[data-care] > summary").click()
    page.get_by_role("button", name=name).click()


def shown(page: Page, where: str) -> str:
    """Everything that can be read there, with all that can be opened open."""
    page.locator(f"{where} details").evaluate_all("all => all.forEach(each => (each.open = true))")
    seen = [one for one in page.locator(where).all() if one.is_visible()]
    return " ".join(one.inner_text() for one in seen)


@pytest.mark.parametrize(
    "lesson",
    ["river-walk", "market-drinks", "soup-night", "bean-stew", "two-days", "garden-baskets"],
)
def test_no_number_of_a_food_is_left_on_the_page(page: Page, site: str, lesson: str) -> None:
    page.goto(f"{site}{lesson}/index.html")
    where = "gap-calculator, day-balance, .stop-compare > .helps > details[data-with-numbers], .stop-move"
    assert OF_FOODS.search(shown(page, where))
    switch_on(page, f"{site}{lesson}/index.html")
    left = shown(page, where)
    assert OF_FOODS.findall(left) == []
    assert page.locator(".holding b:visible").count() == 0
    assert page.locator("form[aria-label='All together']:visible").count() == 0


def test_blocks_tens_and_moves_stay_and_can_be_worked_with(page: Page, site: str) -> None:
    switch_on(page, f"{site}river-walk/index.html")
    row = page.locator("form.gap-row:has(input[name=gap])").first
    expect(row.locator(".piles .blocks").first).to_be_visible()
    expect(page.locator("move-card h3").first).to_be_visible()
    row.locator("input[name=gap]").fill("320")
    row.locator("input[name=count]").fill("32")
    row.get_by_role("button").first.click()
    expect(row.locator("[data-band]")).to_have_text(re.compile("Yes"))
    assert not OF_FOODS.search(row.inner_text())


def test_it_is_kept_for_every_page_of_this_device_and_can_be_switched_off(
    page: Page, site: str
) -> None:
    switch_on(page, f"{site}river-walk/index.html")
    for path in ("soup-night/index.html", "river-walk/worksheet.html", "river-walk/answers.html"):
        page.goto(site + path)
        assert page.locator("[data-with-numbers]").count() > 0
        assert page.locator("[data-with-numbers]:visible").count() == 0
    page.goto(f"{site}river-walk/index.html")
    page.locator("[data-care] > summary").click()
    button = page.get_by_role("button", name="Blocks only")
    expect(button).to_have_attribute("aria-pressed", "true")
    button.press("Enter")
    expect(button).to_have_attribute("aria-pressed", "false")
    expect(page.locator(".holding b").first).to_be_visible()


def test_a_stop_that_is_all_numbers_says_so_and_lets_go_on(page: Page, site: str) -> None:
    switch_on(page, f"{site}two-days/index.html")
    day = page.locator(".stop-day").first
    expect(day.get_by_text("Blocks only is on")).to_be_visible()
    expect(day.locator("table").first).to_be_hidden()


@pytest.mark.parametrize("path", ["index.html", "worksheet.html", "answers.html"])
def test_a_last_question_about_what_foods_hold_is_left_out_and_said_so(
    page: Page, site: str, path: str
) -> None:
    switch_on(page, f"{site}two-days/index.html")
    page.goto(f"{site}two-days/{path}")
    last = page.locator(".stop", has=page.get_by_role("heading", name="One last question"))
    expect(last.get_by_text("Blocks only is on")).to_be_visible()
    expect(last.get_by_text("Which one holds just as much")).to_be_hidden()


def test_in_spanish_and_accessible(page: Page, site: str, axe: Callable[[Page], list[str]]) -> None:
    switch_on(page, f"{site}es/river-walk/index.html", "Solo bloques")
    assert not OF_FOODS.search(shown(page, "gap-calculator"))
    assert axe(page) == []


def test_without_it_every_number_is_there_and_no_word_of_it(page: Page, site: str) -> None:
    page.goto(f"{site}two-days/index.html")
    expect(page.locator("[data-instead-of-numbers]").first).to_be_hidden()
    expect(page.locator(".stop-day table").first).to_be_visible()
