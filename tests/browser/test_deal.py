"""Three cards dealt for a family: of the lesson's own, seated the same, with the room looked at first."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Literal

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.browser.opened_pacer import hold_time, show_counts
from tests.shared_context import OWN_CONTEXT

SCHEMES: tuple[Literal["light", "dark"], ...] = ("light", "dark")
OWN, FEW = "river-walk", "soup-night"
"""A lesson of three moves, and one of two."""


@pytest.fixture
def site(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def ask(page: Page) -> Locator:
    page.get_by_role("button", name="Deal three cards").click()
    return page.locator("dialog.pacer")


def dealt(page: Page) -> Locator:
    """Ask for a deal and say that the room is ready."""
    window = ask(page)
    window.get_by_role("button", name="We are ready").click()
    return window


def names(window: Locator) -> list[str]:
    return [name.strip() for name in window.locator(".card :is(h2, h3)").all_inner_texts()]


def test_three_cards_of_the_lesson_and_nobody_is_asked_who(page: Page, site: str) -> None:
    page.goto(f"{site}{OWN}/index.html")
    own = {name.strip() for name in page.locator("move-card h3").all_inner_texts()}
    window = dealt(page)
    expect(window.get_by_role("heading", name="Three cards for whoever")).to_be_focused()
    assert len(names(window)) == len(set(names(window))) == 3
    assert set(names(window)) <= own
    expect(window).to_contain_text("Seated counts the same")
    expect(window).to_contain_text("There is nothing to win")
    expect(window).to_contain_text("This is a team count")
    assert window.locator("input, select").count() == 0
    for card in window.locator(".card").all():
        card.get_by_text("Seated", exact=True).click()
        expect(card.locator("[data-seated] .figure")).to_have_count(2)


def test_the_room_is_looked_at_once_before_the_first(page: Page, site: str) -> None:
    page.goto(f"{site}{OWN}/index.html")
    window = ask(page)
    expect(window.get_by_role("heading", name="Before you move")).to_be_focused()
    expect(window.locator("li")).to_have_count(page.locator(".stop .before li").count())
    assert window.locator(".dealt").count() == 0
    window.get_by_role("button", name="We are ready").click()
    page.keyboard.press("Escape")
    expect(page.get_by_role("button", name="Deal three cards")).to_be_focused()
    expect(ask(page).locator(".dealt")).to_be_visible()


def test_where_the_lesson_has_few_the_library_lends_some(page: Page, site: str) -> None:
    page.goto(f"{site}{FEW}/index.html")
    show_counts(page)
    own = {name.strip() for name in page.locator("move-card h3").all_inner_texts()}
    window = dealt(page)
    assert len(set(names(window))) == 3
    lent = window.locator(".card").filter(has_text="You choose together how many")
    assert lent.count() >= 1
    assert set(names(window)) - own
    assert lent.locator(".number, .button").count() == 0
    lent.first.get_by_text("How to", exact=True).click()
    expect(lent.first.locator("ol li")).to_have_count(3)
    assert all(
        src and (page.request.get(page.evaluate("src => new URL(src, location).href", src))).ok
        for src in [each.get_attribute("src") for each in lent.locator(".figure").all()]
    )


def test_there_is_another_deal_at_will(page: Page, site: str) -> None:
    page.goto(f"{site}{FEW}/index.html")
    window = dealt(page)
    for _ in range(5):
        before = names(window)
        window.get_by_role("button", name="Deal again").click()
        assert names(window) != before
        assert len(set(names(window))) == 3
        expect(window.get_by_role("heading", name="Three cards for whoever")).to_be_focused()


@OWN_CONTEXT  # its clock is false
def test_a_dealt_card_counts_along_and_leads_back(page: Page, site: str) -> None:
    page.clock.install()
    page.goto(f"{site}{OWN}/index.html")
    show_counts(page)
    page.locator("move-card").evaluate_all("all => all.forEach(one => (one.dataset.count = '2'))")
    window = dealt(page)
    before = names(window)
    window.get_by_role("button", name="Count with me").first.click()
    hold_time(page)
    window.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000)
    expect(window).to_contain_text("have some water")
    window.get_by_role("button", name="Back to the three cards").click()
    assert names(window) == before


@pytest.mark.parametrize("width", [390, 1280])
def test_a_count_still_to_find_stays_covered(page: Page, site: str, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(f"{site}{OWN}/index.html")
    page.get_by_role("button", name="Show the count").first.press("Enter")
    covered = page.locator("move-card[data-covered]").count()
    assert covered
    window = dealt(page)
    expect(window.locator(".card[data-covered]")).to_have_count(covered)
    for hidden in window.locator(".card[data-covered] :is(.number, .quiet) > span").all():
        expect(hidden).to_be_hidden()
    for card in window.locator(".dealt > .card").all():
        is_covered = card.get_attribute("data-covered") is not None
        expect(card.locator("i:visible")).to_have_count(int(is_covered))  # not yet worked out
    expect(window.get_by_role("button", name="Count with me")).to_have_count(3 - covered)


def test_it_is_there_from_a_folder_in_spanish(
    page: Page, built_site: Path, complaints: list[str]
) -> None:
    page.goto((built_site / "es" / FEW / "index.html").as_uri())
    page.get_by_role("button", name="Repartir tres tarjetas").click()
    window = page.locator("dialog.pacer")
    window.get_by_role("button", name="Podemos empezar").click()
    expect(window.locator(".card")).to_have_count(3)
    complaints.clear()  # Chromium reads no captions from a folder


@pytest.mark.parametrize("width", [320, 1280])
@pytest.mark.parametrize("path", [f"{FEW}/index.html", f"{FEW}/cards.html"])
def test_axe_finds_nothing_and_nothing_is_wider_than_the_screen(
    page: Page, site: str, axe: Callable[[Page], list[str]], path: str, width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(site + path)
    if "cards" in path:
        page.get_by_role("button", name="Deal three cards").click()
    else:
        dealt(page)
    for scheme in SCHEMES:
        page.emulate_media(color_scheme=scheme)
        assert axe(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    sizes = "all => all.map(one => one.getBoundingClientRect()).map(({width, height}) => [width, height])"
    for wide, high in page.locator(".dealt :is(.button, summary), .deal button").evaluate_all(
        sizes
    ):
        assert min(wide, high) >= 44


@pytest.mark.parametrize("lesson", [OWN, FEW])
def test_the_printed_cards_can_be_dealt_on_the_screen(page: Page, site: str, lesson: str) -> None:
    page.goto(f"{site}{lesson}/cards.html")
    before = page.locator("main").inner_html()
    deals = page.locator("deal-cards")
    button = deals.get_by_role("button", name="Deal three cards")
    seen: list[str] = []
    for _ in range(4):
        button.click()
        assert len(set(names(deals))) == 3
        assert names(deals) != seen
        seen = names(deals)
        expect(deals.get_by_role("status")).to_have_text(", ".join(seen))
    expect(deals).to_contain_text("Seated counts the same")
    expect(deals.locator(".seated").first).to_be_visible()
    page.emulate_media(media="print")
    expect(deals).to_be_hidden()
    assert page.locator("main").inner_html() == before, "what is printed is the same"


def test_without_a_script_the_cards_page_says_how_to_deal_by_hand(
    browser: Browser, site: str
) -> None:
    with browser.new_context(java_script_enabled=False) as context:
        page = context.new_page()
        page.goto(f"{site}{OWN}/cards.html")
        expect(page.locator("deal-cards")).to_contain_text("turn three over")
        expect(page.locator("deal-cards")).to_contain_text("There is nothing to win")
        expect(page.get_by_role("button", name="Deal three cards")).to_be_hidden()
        page.goto(f"{site}{OWN}/index.html")
        assert page.locator(".deal").count() == 0
