"""A card's count is the learner's to find: covered until it is found, looked at or asked for."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

Serve = Callable[[Path], str]
LESSON = "river-walk"
ASKED = "move-card[data-row]"
"""A row that is worked shows its count from the start."""


@pytest.fixture
def address(built_site: Path, serve: Serve) -> str:
    """A lesson of the demo in which gaps and counts are asked for."""
    return f"{serve(built_site)}{LESSON}/index.html"


def card_of(page: Page, row: Locator) -> Locator:
    return page.locator(f"move-card[data-row='{row.get_attribute('id')}']")


def first_row(page: Page) -> Locator:
    return page.locator("form:has(input[name=count])").first


def expect_covered(card: Locator, *, covered: bool) -> None:
    """The count, the division and what is left over are there or not, the buttons accordingly."""
    for hidden in card.locator(".number > span, .quiet > span").all():
        assert hidden.evaluate(VISIBLE) != covered
    expect(card.get_by_role("button", name="Show the count")).to_have_count(int(covered))
    expect(card.get_by_role("button", name="Count with me")).to_have_count(int(not covered))


WIDTHS = pytest.mark.parametrize("width", [320, 390, 1280])


@WIDTHS
def test_it_is_covered_at_first_and_a_reader_does_not_hear_it(
    page: Page, address: str, width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(address)
    cards = page.locator(ASKED).all()
    assert cards
    for card in cards:
        expect_covered(card, covered=True)
        count = card.get_attribute("data-count") or ""
        assert count not in card.locator("h3").aria_snapshot()
        assert "÷" not in card.aria_snapshot()


KNOT = """card => {
  const number = card.querySelector('.number'), knot = getComputedStyle(number, '::before');
  return { high: parseFloat(knot.height) / parseFloat(getComputedStyle(number).fontSize), drawn: knot.backgroundImage };
}"""


@WIDTHS
def test_a_closed_knot_as_high_as_a_figure_stands_in_its_place(
    page: Page, address: str, width: int
) -> None:
    """A figure is some 0.72 of its size high in most families (common practice, no source)."""
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(address)
    for card in page.locator(ASKED).all():
        knot = card.evaluate(KNOT)
        assert knot["high"] == pytest.approx(0.72, abs=0.01)
        assert "radial-gradient" in knot["drawn"]
        expect(card.get_by_text("not yet worked out")).to_be_visible()
        assert "?" not in card.locator("h3, .quiet").first.inner_text()
        word, below = (
            card.locator(part).first.bounding_box() for part in (".quiet > i", ".quiet + p")
        )
        assert word
        assert below
        assert word["y"] + word["height"] <= below["y"] + 0.5


def test_finding_the_row_uncovers_its_card_alone(page: Page, address: str) -> None:
    page.goto(address)
    row = first_row(page)
    for name in ("gap", "count"):
        row.locator(f"input[name={name}]").fill(row.get_attribute(f"data-{name}") or "")
    row.get_by_role("button", name="Check").click()
    expect_covered(card_of(page, row), covered=False)
    expect_covered(page.locator("move-card").last, covered=True)
    page.reload()
    expect_covered(card_of(page, row), covered=False)
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect_covered(card_of(page, row), covered=True)


def test_looking_at_the_working_uncovers_it(page: Page, address: str) -> None:
    page.goto(address)
    row = first_row(page)
    row.locator("[data-working] > summary").press("Enter")
    expect_covered(card_of(page, row), covered=False)


def test_it_is_shown_when_asked_for_and_stays_so(page: Page, address: str) -> None:
    page.goto(address)
    card = page.locator(ASKED).first
    card.get_by_role("button", name="Show the count").press("Enter")
    expect_covered(card, covered=False)
    expect(card.get_by_role("button", name="Count with me")).to_be_focused()
    page.reload()
    expect_covered(card, covered=False)


def test_uncovering_moves_nothing(page: Page, address: str) -> None:
    page.goto(address)
    card = page.locator(ASKED).first
    place = "each => [each.offsetTop, each.offsetHeight, document.body.offsetHeight]"
    before = card.evaluate(place)
    card.get_by_role("button", name="Show the count").click()
    assert card.evaluate(place) == before


def test_without_script_and_on_paper_it_is_there(
    address: str, browser: Browser, page: Page
) -> None:
    context = browser.new_context(java_script_enabled=False)
    scriptless = context.new_page()
    scriptless.goto(address)
    for card in scriptless.locator("move-card").all():
        expect(card.locator(".number > span")).to_have_text(card.get_attribute("data-count") or "")
        assert card.locator(".number > span").evaluate(VISIBLE)
    context.close()
    page.goto(address)
    page.emulate_media(media="print")
    assert page.locator("move-card .number > span").first.evaluate(VISIBLE)
    for word in page.locator("move-card i").all():
        expect(word).to_be_hidden()  # nothing is still to find beside the number itself


VISIBLE = "each => each.checkVisibility({visibilityProperty: true})"


def test_where_the_script_does_not_come_it_is_there_after_a_while(page: Page, address: str) -> None:
    page.route("**/work-*.js", lambda route: route.fulfill(body=""))
    page.goto(address)
    expect(page.locator("move-card .number > span").first).to_be_visible()
