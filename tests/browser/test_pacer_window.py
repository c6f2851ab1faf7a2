"""The pacer's window: what it shows and tells of a count, once each, and nothing moves where nothing may."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from pathlib import Path
from typing import Literal

import pytest
from playwright.sync_api import Page, expect

from tests.browser.opened_pacer import LESSON, begin, begin_out_of_time, number, open_pacer, pace
from tests.shared_context import OWN_CONTEXT

SCHEMES: tuple[Literal["light", "dark"], ...] = ("light", "dark")


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    """A lesson of the demo whose move counts what its rows find."""
    return f"{serve(built_site)}{LESSON}/index.html"


@OWN_CONTEXT  # its clock is false
def test_the_number_is_said_in_steps_and_not_at_each_beat(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address, count=12)
    pacer.get_by_role("button", name="Start").click()
    said = []
    for _ in range(12):
        page.clock.run_for(60_000 // pace(pacer))
        said.append(pacer.get_by_role("status").first.inner_text())
    assert list(dict.fromkeys(said)) == ["1", "5", "10", "12"]


TOLD = """() => {
  window.told = [];
  const region = document.querySelector('.pacer [role=status]');
  new MutationObserver(() => region.textContent && told.push(region.textContent)).observe(region, {childList: true});
}"""


@OWN_CONTEXT  # its clock is false
def test_start_pause_going_on_and_pace_are_told_once_in_one_place(page: Page, address: str) -> None:
    """What the eye sees of it is hidden from who listens; the end is told by the heading alone."""
    pacer = begin_out_of_time(page, address, count=2)
    page.evaluate(TOLD)
    beat = 60_000 // pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(beat + 100)
    pacer.get_by_role("button", name="Pause").click()
    pacer.get_by_role("button", name="Keep counting").click()
    pacer.get_by_role("button", name="Slower").click()
    page.clock.run_for(10 * beat)
    heading = "You counted to 2. Now you know how long that is."
    expect(pacer.get_by_role("heading")).to_be_focused()
    expect(pacer.get_by_role("heading")).to_have_text(heading)
    assert page.evaluate("told") == [
        "Get ready",
        "1",
        "Paused at 1",
        "Going on from 1",
        "25 a minute",
        "2",
    ]
    assert pacer.locator("[role=status], [aria-live], output").count() == 1
    expect(pacer.get_by_role("status")).to_have_text("")


@OWN_CONTEXT  # its clock is false
def test_what_is_told_is_not_read_twice(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address)
    pacer.get_by_role("button", name="Start").click()
    assert pacer.get_by_text("Get ready").count() == 2
    seen = pacer.locator(".pacer-state")
    expect(seen).to_be_visible()
    expect(seen).to_have_attribute("aria-hidden", "true")


TURN = "each => Number(each.querySelector('.pacer-bob > g').getAttribute('transform').match(/-?[\\d.]+/)[0])"
"""Degrees that the plumb bob hangs out."""


@OWN_CONTEXT  # its clock is false
def test_a_plumb_bob_swings_across_once_a_count_at_the_learners_pace(
    page: Page, address: str
) -> None:
    pacer = begin_out_of_time(page, address, count=20)
    assert pacer.evaluate(TURN) == 0
    pacer.get_by_role("button", name="Slower").click()
    beat = 60_000 / pace(pacer)
    pacer.get_by_role("button", name="Start").click()
    start = page.evaluate("performance.now()")
    turns = []
    for half in range(2, 11):
        page.clock.run_for(round(start + half * beat / 2) - page.evaluate("performance.now()"))
        turns.append(pacer.evaluate(TURN))
    turned = turns[::2]
    assert [round(abs(turn)) for turn in turned] == [20] * 5
    assert all(one * other < 0 for one, other in pairwise(turned))
    assert all(abs(turn) < 3 for turn in turns[1::2])
    pacer.get_by_role("button", name="Pause").click()
    held = pacer.evaluate(TURN)
    page.clock.run_for(5_000)
    assert pacer.evaluate(TURN) == held


@OWN_CONTEXT  # its clock is false
def test_the_bob_hangs_still_where_nothing_may_move(page: Page, address: str) -> None:
    page.emulate_media(reduced_motion="reduce")
    pacer = begin_out_of_time(page, address, count=20)
    pacer.get_by_role("button", name="Start").click()
    for _ in range(4):
        page.clock.run_for(700)
        assert pacer.evaluate(TURN) == 0
        assert page.evaluate("document.getAnimations().length") == 0
    assert number(pacer) > 0


LEFT = "each => each.querySelector('.pacer-tens .wash').getAttribute('d').split('M').length - 1"
"""How many blocks are drawn."""


@OWN_CONTEXT  # its clock is false
def test_a_block_walks_off_with_each_count_until_none_is_left(page: Page, address: str) -> None:
    pacer = begin_out_of_time(page, address, count=13)
    beat = 60_000 // pace(pacer)
    left = [pacer.evaluate(LEFT)]
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(beat // 2)
    for _ in range(13):
        page.clock.run_for(beat)
        left.append(pacer.evaluate(LEFT))
        assert left[-1] == 13 - number(pacer)
    assert left == [*range(13, -1, -1)]


@pytest.mark.parametrize("way", ["standing", "seated"])
@OWN_CONTEXT  # its clock is false
def test_two_poses_take_turns_with_the_count(page: Page, address: str, way: str) -> None:
    pacer = begin_out_of_time(page, address, count=5)
    if way == "seated":
        pacer.get_by_label("Seated").check()
    seen = "each => [...each.querySelectorAll('.pacer-stage .figure')].findIndex(one => one.checkVisibility({visibilityProperty: true}))"
    assert pacer.locator(".figure").count() == 2
    pacer.get_by_role("button", name="Start").click()
    shown = []
    for _ in range(4):
        page.clock.run_for(60_000 // pace(pacer))
        shown.append(pacer.evaluate(seen))
    assert shown == [1, 0, 1, 0]


def test_figures_take_turns_but_not_where_nothing_may_move(page: Page, address: str) -> None:
    seen = "each => [...each.querySelectorAll('.pacer-stage .figure')].filter(one => one.checkVisibility({visibilityProperty: true})).length"
    page.goto(address)
    pacer = begin(page)
    assert pacer.evaluate(seen) == 1
    page.emulate_media(reduced_motion="reduce")
    assert pacer.evaluate(seen) == 2


@OWN_CONTEXT  # its clock is false
def test_heading_text_and_buttons_of_the_last_window_begin_on_one_line(
    page: Page, address: str
) -> None:
    pacer = begin_out_of_time(page, address, count=1)
    pacer.get_by_role("button", name="Start").click()
    page.clock.run_for(60_000)
    expect(pacer).to_contain_text("have some water")
    aligned = pacer.evaluate(
        "each => [...each.querySelectorAll('h2, p:not(.unseen)')].map(one => getComputedStyle(one).textAlign)"
    )
    assert set(aligned) == {"start"}
    begin_at = "each => [...each.querySelectorAll('h2, p:not(.unseen), .buttons > :first-child')].map(one => one.getBoundingClientRect().left)"
    assert len({round(left) for left in pacer.evaluate(begin_at)}) == 1


@pytest.mark.parametrize(("width", "height"), [(320, 568), (390, 844), (844, 390)])
def test_start_is_on_the_screen_however_small_it_is(
    page: Page, address: str, width: int, height: int
) -> None:
    page.set_viewport_size({"width": width, "height": height})
    page.goto(address)
    pacer = begin(page)
    expect(pacer.get_by_role("button", name="Start")).to_be_in_viewport(ratio=1)
    assert pacer.evaluate("each => each.scrollTop") == 0


@pytest.mark.parametrize("width", [320, 1280])
def test_axe_finds_nothing_on_any_screen(
    page: Page, address: str, axe: Callable[[Page], list[str]], width: int
) -> None:
    """In the light and in the dark: what is asked for changes styles alone, so one visit serves both."""

    def barriers() -> list[str]:
        found = []
        for scheme in SCHEMES:
            page.emulate_media(color_scheme=scheme)
            found += axe(page)
        return found

    page.set_viewport_size({"width": width, "height": 700})
    page.goto(address)
    pacer = open_pacer(page, count=1)
    assert barriers() == []
    pacer.get_by_role("button", name="We are ready").click()
    assert barriers() == []
    for name in ("Seated", "River"):
        pacer.get_by_label(name).check()
    assert barriers() == []
    pacer.get_by_role("button", name="Start").click()
    expect(pacer).to_contain_text("have some water")
    assert barriers() == []
    assert page.evaluate("document.querySelector('dialog.pacer').scrollWidth") <= width
