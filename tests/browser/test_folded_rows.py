"""A found row folds to one line, never under the learner's focus, and opens again."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

LESSON = "river-walk/index.html"
FOODS = "Apple · Apple pie"


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    """The demo, served."""
    return serve(built_site)


def solve(row: Locator) -> None:
    """Answer a row rightly and stay on its button."""
    for name in ("gap", "count"):
        if right := row.get_attribute(f"data-{name}"):
            row.locator(f"input[name={name}]").fill(right)
    row.locator("[data-check]").click()


def rows(page: Page) -> tuple[Locator, Locator]:
    """The first two rows that ask for a gap and a count."""
    asked = page.locator("form:has(input[name=count])")
    return asked.nth(0), asked.nth(1)


def test_a_found_row_stays_whole_until_the_learner_is_elsewhere(page: Page, address: str) -> None:
    page.goto(address + LESSON)
    first, second = rows(page)
    solve(first)
    expect(first.locator("[data-band]")).to_contain_text("Yes.")
    expect(first.locator("[data-check]")).to_be_focused()
    entry = second.locator("input[name=gap]")
    entry.scroll_into_view_if_needed()
    before = entry.evaluate("each => each.getBoundingClientRect().top")
    entry.focus()
    line = first.get_by_role("button", name=FOODS)
    expect(line).to_have_attribute("aria-expanded", "false")
    assert re.sub(r"\s+", " ", line.inner_text()).endswith("410 − 90 = 320 320 ÷ 10 = 32")
    expect(first.locator(".holding").first).to_be_hidden()
    expect(entry).to_be_focused()
    assert abs(entry.evaluate("each => each.getBoundingClientRect().top") - before) < 1
    expect(page.locator("body > [role=status]")).to_contain_text(FOODS)


def test_it_opens_again_folds_again_and_is_folded_after_a_reload(page: Page, address: str) -> None:
    page.goto(address + LESSON)
    first, second = rows(page)
    solve(first)
    second.locator("input[name=gap]").focus()
    line = first.locator(".found-row")
    line.press("Enter")
    expect(line).to_have_attribute("aria-expanded", "true")
    expect(line).to_be_focused()
    expect(first.locator("[data-band]")).to_be_visible()
    line.press("Enter")
    expect(first.locator("[data-band]")).to_be_hidden()
    page.reload()
    expect(line).to_have_attribute("aria-expanded", "false")
    expect(first.locator(".holding").first).to_be_hidden()
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect(line).to_have_count(0)
    expect(first.locator(".holding").first).to_be_visible()


def test_a_row_worked_out_to_be_followed_folds_with_the_first_that_is_found(
    page: Page, address: str
) -> None:
    page.goto(address + LESSON)
    first, second = rows(page)
    worked = page.locator("form.gap-row:not(:has(input))").first
    solve(first)
    expect(worked.locator(".working")).to_be_visible()
    second.locator("input[name=gap]").focus()
    expect(worked.locator(".working")).to_be_hidden()
    worked.locator(".found-row").press("Enter")
    expect(worked.locator(".working")).to_be_visible()
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect(page.locator(".found-row")).to_have_count(0)


def test_an_answer_that_is_spoiled_again_is_a_row_like_all_others(page: Page, address: str) -> None:
    page.goto(address + LESSON)
    first, second = rows(page)
    solve(first)
    second.locator("input[name=gap]").focus()
    first.locator(".found-row").press("Enter")
    first.locator("input[name=gap]").fill("31")
    expect(first.locator("input[name=gap]")).to_be_focused()
    expect(first.locator(".found-row")).to_have_count(0)
    second.locator("input[name=gap]").focus()
    expect(first.locator(".holding").first).to_be_visible()


def test_on_paper_a_folded_row_is_whole(page: Page, address: str) -> None:
    page.goto(address + LESSON)
    first, second = rows(page)
    solve(first)
    second.locator("input[name=gap]").focus()
    page.emulate_media(media="print")
    expect(first.locator(".holding").first).to_be_visible()
    expect(first.locator(".found-row")).to_be_hidden()


@pytest.mark.parametrize("path", [LESSON, "es/river-walk/index.html", "market-drinks/index.html"])
@pytest.mark.parametrize("width", [320, 390])
def test_entries_and_their_button_stand_on_one_line(
    page: Page, address: str, path: str, width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 700})
    page.goto(address + path)
    answers = page.locator(".gap-row .answer").all()
    assert answers
    for answer in answers:
        ends = answer.locator("input, [data-check]").evaluate_all(
            "all => all.map(each => Math.round(each.getBoundingClientRect().bottom))"
        )
        assert max(ends) - min(ends) <= 1
        assert answer.evaluate("each => each.scrollWidth <= each.clientWidth + 1")


def test_an_entry_takes_no_more_than_an_answer_needs(page: Page, address: str) -> None:
    page.goto(address + LESSON)
    lengths = page.locator("input[inputmode=decimal]").evaluate_all(
        "all => all.map(each => each.maxLength)"
    )
    assert lengths
    assert set(lengths) == {40}


def test_help_is_one_rank_and_what_is_for_adults_one_place(page: Page, address: str) -> None:
    page.set_viewport_size({"width": 390, "height": 844})
    page.goto(address + LESSON)
    first, _ = rows(page)
    helps = first.locator(".helps summary")
    assert helps.all_inner_texts() == ["Hint", "Blocks", "Show the working"]
    tops = helps.evaluate_all("all => all.map(each => each.getBoundingClientRect().top)")
    assert max(tops) - min(tops) < 1
    adults = page.locator(".stop-compare > .helps > details[data-with-numbers]").first
    assert adults.locator("summary").all_inner_texts() == ["For adults"]
    assert adults.locator("details").count() == 0
    adults.locator("summary").click()
    for said in ("See it as bars", "What each one brings", "Where the numbers come from"):
        expect(adults.get_by_role("heading", name=said)).to_be_visible()


def test_two_cards_of_moves_stand_side_by_side_on_a_phone(page: Page, address: str) -> None:
    page.set_viewport_size({"width": 390, "height": 844})
    page.goto(address + LESSON)
    tops = page.locator(".moves > li").evaluate_all(
        "all => all.map(each => Math.round(each.getBoundingClientRect().top))"
    )
    assert tops[0] == tops[1] < tops[2]
    alone = page.locator(".moves > li").nth(2).bounding_box()
    assert alone
    assert alone["width"] > 280, "the third lies across"
    card = page.locator("move-card[data-row]").first
    expect(card.get_by_text("not yet worked out")).to_be_visible()
    card.get_by_text("How to", exact=True).click()
    assert card.bounding_box()["width"] > 280  # type: ignore[index]  # it is in sight
    card.get_by_role("button", name="Show the count").click()
    expect(card.get_by_text("not yet worked out")).to_be_hidden()


def test_without_script_nothing_is_folded(address: str, browser: Browser) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(address + LESSON)
    expect(page.locator(".found-row")).to_have_count(0)
    cards = page.locator("move-card").all()
    assert cards
    for card in cards:
        expect(card.get_by_text("not yet worked out")).to_be_hidden()
    context.close()
