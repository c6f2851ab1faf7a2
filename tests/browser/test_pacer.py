"""The pacer: right by the clock however busy or hidden the page is, and calm at its end."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.opened_pacer import (
    LESSON,
    begin,
    begin_out_of_time,
    hold_time,
    number,
    open_pacer,
    pace,
    show_counts,
)
from tests.browser.pacer_watch import BUSY, LATE
from tests.shared_context import OWN_CONTEXT

Serve = Callable[[Path], str]


@pytest.fixture
def address(built_site: Path, serve: Serve) -> str:
    """A lesson of the demo whose move counts what its rows find."""
    return f"{serve(built_site)}{LESSON}/index.html"


@OWN_CONTEXT  # its clock is false
def test_two_minutes_by_a_controlled_clock(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address, count=500)
    own = pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    start = page.evaluate("performance.now()")
    for seconds in (30, 60, 120):
        page.clock.run_for(seconds * 1000 - round(page.evaluate("performance.now()") - start))
        passed = page.evaluate("performance.now()") - start
        assert passed == pytest.approx(seconds * 1000, abs=1)
        due = passed * own / 60_000
        near = 50 * own / 60_000  # 50 ms of a beat, either way
        assert int(due - near) <= number(pacer) <= int(due + near)


@OWN_CONTEXT  # its clock is false
def test_a_page_that_slept_counts_as_if_it_had_not(page: Page, address: str) -> None:
    """As after a hidden tab or a closed lid: every timer that was due comes once, late."""
    pacer = begin_out_of_time(page, address, count=500)
    own = pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    start = page.evaluate("performance.now()")
    page.clock.fast_forward(90_000)
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    passed = page.evaluate("performance.now()") - start
    assert abs(number(pacer) - passed * own / 60_000) <= 1
    assert number(pacer) == int(passed * own / 60_000 + 1e-6)


@OWN_CONTEXT  # its clock is false
def test_on_a_busy_page_no_number_comes_late(page: Page, address: str) -> None:
    """Ten seconds of a page that does nothing but work for BUSY ms in every 700, by a false clock.

    A timer that falls due meanwhile comes once, at the end. By the real clock it is measured by
    `python bench/run.py --only pacer`.
    """
    pacer = begin_out_of_time(page, address, count=500)
    own = pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    start = page.evaluate("performance.now()")
    shown = []
    for _ in range(10_000 // 700 + 1):
        for pass_time, milliseconds in (
            (page.clock.fast_forward, BUSY),
            (page.clock.run_for, 700 - BUSY),
        ):
            pass_time(milliseconds)
            now, number = page.evaluate(
                "[performance.now(), Number(document.querySelector('.pacer-number b').textContent)]"
            )
            due = (now - start) * own / 60_000
            near = LATE * own / 60_000
            assert int(due - near) <= number <= int(due + near)
            shown.append(number)
    assert shown == sorted(shown)
    assert shown[-1] > 3


@OWN_CONTEXT  # its clock is false
def test_a_pause_stops_it_and_going_on_keeps_the_beat(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000 // pace(pacer) * 3 + 200)
    assert number(pacer) == 3
    pacer.get_by_role("button", name="Pause").click()
    expect(pacer).to_contain_text("Paused at 3")
    page.clock.run_for(20_000)
    assert number(pacer) == 3
    pacer.get_by_role("button", name="Keep counting").click()
    page.clock.run_for(60_000 // pace(pacer))
    assert number(pacer) == 4


@OWN_CONTEXT  # its clock is false
def test_it_ends_with_rest_and_waits_for_the_learner(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address, count=3)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000)
    expect(pacer.get_by_role("heading")).to_have_text(
        "You counted to 3. Now you know how long that is."
    )
    expect(pacer.get_by_role("heading")).to_be_focused()
    expect(pacer).to_contain_text("have some water")
    page.clock.run_for(600_000)
    expect(pacer).to_contain_text("have some water")
    pacer.get_by_role("button", name="Next:").click()
    expect(pacer.get_by_role("button", name="Start")).to_be_focused()  # no second room check


@OWN_CONTEXT  # its clock is false
def test_what_is_left_over_is_told(page: Page, address: str) -> None:
    page.clock.install()
    page.goto(address)
    show_counts(page)
    card = page.locator("move-card:not([data-left=''])").first
    left = card.get_attribute("data-left") or ""
    card.get_by_role("button", name="Count with me").click()
    pacer = page.locator("dialog.pacer")
    pacer.get_by_role("button", name="We are ready").click()
    hold_time(page)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(120_000)
    expect(pacer).to_contain_text(f"{left} left over.")
    assert left.isdigit()  # no unit: nothing to take for a price


@OWN_CONTEXT  # its clock is false
def test_the_count_belongs_to_everybody_while_it_runs_and_after(page: Page, address: str) -> None:
    page.clock.install()
    page.goto(address)
    show_counts(page)
    page.get_by_role("button", name="Count with me").first.click()
    pacer = page.locator("dialog.pacer")
    pacer.get_by_role("button", name="We are ready").click()
    hold_time(page)
    team = pacer.get_by_text("This is a team count: share it among everyone in the room.")
    expect(team).to_be_visible()
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(600_000)
    expect(pacer).to_contain_text("have some water")
    expect(team).to_be_visible()


def test_by_keyboard_alone_and_back_to_where_it_was_opened(page: Page, address: str) -> None:
    page.goto(address)
    show_counts(page)
    opener = page.get_by_role("button", name="Count with me").first
    opener.focus()
    page.keyboard.press("Enter")
    pacer = page.locator("dialog.pacer")
    expect(pacer.get_by_role("heading", name="Before you move")).to_be_focused()
    expect(pacer.locator("li")).to_have_count(page.locator(".before li").count())
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(pacer.get_by_role("button", name="Start")).to_be_focused()
    page.keyboard.press("Space")
    expect(pacer.get_by_role("button", name="Pause")).to_be_focused()
    page.keyboard.press("Escape")
    expect(pacer).not_to_be_visible()
    expect(opener).to_be_focused()


def test_the_seated_way_brings_its_own_figures_and_words(page: Page, address: str) -> None:
    page.goto(address)
    seated = page.locator("move-card [data-seated] p:last-child").first.text_content() or ""
    pacer = begin(page)
    standing = pacer.locator(".figure").first.get_attribute("src")
    pacer.get_by_label("Seated").check()
    expect(pacer).to_contain_text(seated)
    assert pacer.locator(".figure").first.get_attribute("src") != standing


def test_the_pace_is_kept_on_the_device(page: Page, address: str) -> None:
    page.goto(address)
    pacer = begin(page)
    own = pace(pacer)
    pacer.get_by_role("button", name="Slower").click()
    slower = pace(pacer)
    assert slower < own
    page.reload()
    assert pace(begin(page)) == slower


def test_a_count_of_nothing_rests(page: Page, address: str) -> None:
    page.goto(address)
    show_counts(page)
    card = page.locator("move-card").first
    card.evaluate("each => { each.dataset.count = '0'; }")
    card.get_by_role("button", name="Count with me").click()
    pacer = page.locator("dialog.pacer")
    expect(pacer.get_by_role("heading", name="Nothing to count here")).to_be_focused()
    expect(pacer).to_contain_text("Rest now")
    expect(pacer.get_by_role("button", name="Start")).to_have_count(0)


@pytest.mark.parametrize(
    "kept", ["99999", "-3", "0.0001", "fast", "null"], ids=lambda text: text.strip("-")
)
def test_what_cannot_be_was_never_chosen(page: Page, address: str, kept: str) -> None:
    """A pace no child can do, a sound nobody has: whatever spoiled what is kept."""
    page.goto(address)
    pacer = begin(page)
    own = pace(pacer)
    pacer.get_by_role("button", name="Slower").click()
    page.evaluate(
        """kept => { const key = Object.keys(localStorage).find(each => each.endsWith('pacer'));
        const all = JSON.parse(localStorage.getItem(key));
        for (const name of Object.keys(all)) all[name] = kept;
        localStorage.setItem(key, JSON.stringify({...all, sound: kept})); }""",
        kept,
    )
    page.reload()
    pacer = begin(page)
    assert pace(pacer) == own
    expect(pacer.get_by_label("Quiet")).to_be_checked()


def test_when_the_script_does_not_come_it_is_said_and_can_be_asked_for_again(
    page: Page, address: str, complaints: list[str]
) -> None:
    page.goto(address)
    show_counts(page)
    page.route("**/play-*.js", lambda route: route.abort())
    button = page.locator("[data-count-with]").first
    button.click()
    expect(button).to_have_text("That part could not load. Try again when you are connected.")
    complaints.clear()
    page.unroute("**/play-*.js")
    button.click()
    expect(page.locator("dialog.pacer")).to_be_visible()
    expect(button).to_have_text("Count with me")


def test_it_opens_from_a_folder(page: Page, built_site: Path, complaints: list[str]) -> None:
    page.goto((built_site / LESSON / "index.html").as_uri())
    expect(open_pacer(page)).to_contain_text("Before you move")
    complaints.clear()  # Chromium reads no captions from a folder
