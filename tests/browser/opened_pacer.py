"""A lesson's pacer, opened as a learner opens it, in time that goes on by itself or only as a test lets it."""

from __future__ import annotations

from playwright.sync_api import Locator, Page, expect

LESSON = "river-walk"
"""A lesson of the demo whose moves count what its rows find."""


def show_counts(page: Page) -> None:
    cover = page.get_by_role("button", name="Show the count")
    while cover.count():
        cover.first.click()


def open_pacer(page: Page, *, count: int = 0) -> Locator:
    """Open the first move's pacer, as far as the room check; with a count of its own if given."""
    if page.locator("[data-covered]").count():
        show_counts(page)
    card = page.locator("move-card").first
    if count:
        card.evaluate("(each, count) => { each.dataset.count = count; }", count)
    card.get_by_role("button", name="Count with me").click()
    pacer = page.locator("dialog.pacer")
    expect(pacer).to_be_visible()
    return pacer


def begin(page: Page, *, count: int = 0) -> Locator:
    """Open the pacer and say that the room is ready."""
    pacer = open_pacer(page, count=count)
    pacer.get_by_role("button", name="We are ready").click()
    return pacer


def hold_time(page: Page) -> None:
    """From now on time goes on only as a test lets it: a busy machine adds nothing."""
    page.clock.pause_at(page.evaluate("Date.now()") / 1000 + 3600)


def begin_out_of_time(page: Page, address: str, *, count: int = 0) -> Locator:
    """Open a lesson and its pacer, the room being ready, and hold the time."""
    page.clock.install()
    page.goto(address)
    pacer = begin(page, count=count)
    hold_time(page)
    return pacer


def number(pacer: Locator) -> int:
    return int(pacer.locator(".pacer-number b").inner_text())


def pace(pacer: Locator) -> int:
    return int(pacer.locator(".pacer-pace b").inner_text().split()[0])
