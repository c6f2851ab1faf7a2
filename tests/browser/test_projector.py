"""A lesson for a projector, in a real Chromium: one stop a screen, large, and nothing before it is asked for."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from generator.compute.class_link import ClassLink, class_link
from tests.browser.watched import until, violations, wait_for_all

RIVER = "river-walk/projector.html"
SCREENS = ((1280, 720), (1024, 768), (1920, 1080))
LEAST = 0.035
"""Of a screen's height, the letters that are read from the back of a room: common practice, no source."""
SMALL = """(least) => {
  const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found = [];
  while (words.nextNode()) {
    const { data, parentElement: holder } = words.currentNode;
    if (!data.trim() || !holder.checkVisibility() || holder.closest('.unseen, .skip, script, style')) continue;
    const drawn = holder.closest('svg')?.getScreenCTM().d ?? 1;
    const size = parseFloat(getComputedStyle(holder).fontSize) * drawn;
    if (size < innerHeight * least - 0.1) found.push(`${data.trim()}: ${size}`);
  }
  return found;
}"""
"""Words that are smaller than this share of the screen's height."""
CUT = """() => [...document.querySelectorAll('main *')].filter(each => each.checkVisibility() && !each.closest('.unseen, svg'))
  .filter(each => each.getBoundingClientRect().right > innerWidth + 1 || each.getBoundingClientRect().left < -1)
  .map(each => `${each.tagName}.${each.className}`)"""
"""What stands beyond the edges, where nobody can scroll to."""
OPEN = "() => document.querySelectorAll('[data-shown] details[open]').length"


@pytest.fixture
def browser_context_args() -> dict[str, Any]:
    """What a classroom's projector shows."""
    return {"viewport": {"width": 1280, "height": 720}, "locale": "en-US"}


@pytest.fixture
def address(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def place(page: Page) -> str:
    return page.locator(".projector-place").inner_text()


def here(page: Page) -> str:
    return str(page.evaluate("location.hash"))


def answers(page: Page) -> int:
    return int(page.evaluate(OPEN))


def opened(page: Page, address: str) -> None:
    page.goto(address)
    wait_for_all(page)


def to_the_rows(page: Page) -> None:
    """On to the first screen of the comparison that has an answer to show."""
    while page.locator("[data-answers]").is_disabled() or here(page) != "#lunch":
        page.keyboard.press("PageDown")


def test_keys_of_a_board_and_of_a_remote_lead_on_and_back_and_a_reload_stays(
    page: Page, address: str
) -> None:
    opened(page, address + RIVER)
    assert (place(page), here(page)) == ("1 / 7", "#hello")
    for key, stop in (("ArrowRight", "2"), ("ArrowLeft", "1"), (" ", "2"), ("PageUp", "1")):
        page.keyboard.press(key)
        assert place(page).startswith(f"{stop} / 7")
    page.keyboard.press("ArrowLeft")
    assert place(page) == "1 / 7"  # nothing stands before it
    page.keyboard.press("PageDown")
    page.keyboard.press("PageDown")
    assert page.locator("[data-shown] h2").evaluate("each => each === document.activeElement")
    page.reload()
    wait_for_all(page)
    assert (place(page)[:5], here(page)) == ("3 / 7", "#lunch")
    assert page.locator(".stop:visible").count() == 1


def test_what_leads_on_skips_nothing_that_lies_below_the_edge(page: Page, address: str) -> None:
    """A table that is taller than the screen: a remote has no key to scroll."""
    opened(page, f"{address}two-days/projector.html#rainy-day")
    table = page.locator("[data-shown] table.day")
    while not table.is_visible():
        page.keyboard.press("PageDown")
    screen = place(page)
    last = table.locator("tr").last
    bar = page.locator("[data-bar]")
    assert bar.bounding_box()["y"] < last.bounding_box()["y"]  # type: ignore[index]
    page.keyboard.press("PageDown")
    assert place(page) == screen
    assert bar.bounding_box()["y"] > last.bounding_box()["y"]  # type: ignore[index]
    page.keyboard.press("PageDown")
    assert place(page) != screen


def test_a_field_keeps_its_keys(page: Page, address: str) -> None:
    opened(page, address + RIVER)
    minutes = page.get_by_label("Timer, which makes no sound")
    minutes.focus()
    for key in ("ArrowRight", "PageDown", "Enter"):
        page.keyboard.press(key)
    assert place(page) == "1 / 7"


def test_answers_come_one_at_a_time_when_asked_for_and_are_covered_again(
    page: Page, address: str
) -> None:
    opened(page, address + RIVER)
    shown = page.locator("[data-answers]")
    to_the_rows(page)
    assert answers(page) == 0
    expect(page.get_by_text("410 − 90 = 320")).to_be_hidden()
    page.keyboard.press("Enter")
    assert answers(page) == 1
    expect(page.get_by_text("410 − 90 = 320")).to_be_in_viewport()
    expect(shown).to_have_text("Cover the answers", use_inner_text=True)
    shown.click()
    assert answers(page) == 0
    expect(shown).to_have_text("Show an answer", use_inner_text=True)
    while here(page) != "#count-it" or shown.is_disabled():
        page.keyboard.press("ArrowRight")
    covered = page.locator("[data-shown] [data-covered]")
    assert covered.count() == 2
    page.keyboard.press("Enter")
    assert covered.count() == 1
    page.keyboard.press("Enter")
    page.keyboard.press("Enter")
    assert covered.count() == 2


def test_no_answer_stands_open_anywhere(page: Page, address: str) -> None:
    """A worked example is shown by its lesson, and is no answer."""
    for lesson in ("bean-stew", "two-days", "es/soup-night"):
        opened(page, f"{address}{lesson}/projector.html")
        assert page.locator(".projector-stops details[open]").count() == 0
        assert page.locator(".projector-stops move-card[data-row]:not([data-covered])").count() == 0


@pytest.mark.parametrize(("width", "height"), SCREENS)
@pytest.mark.parametrize("lesson", ["es/garden-baskets", "bean-stew", "two-days"])
def test_every_letter_is_large_on_every_screen_and_nothing_is_cut_off(
    page: Page, address: str, lesson: str, width: int, height: int
) -> None:
    page.set_viewport_size({"width": width, "height": height})
    opened(page, f"{address}{lesson}/projector.html")
    seen = 0
    while True:
        for _ in range(2):
            assert page.evaluate(SMALL, LEAST) == [], place(page)
            assert page.evaluate(CUT) == [], place(page)
            while not page.locator("[data-answers] span").last.is_visible():
                if page.locator("[data-answers]").is_disabled():
                    break
                page.keyboard.press("Enter")
        seen += 1
        if page.locator("[data-next]").is_disabled():
            break
        page.keyboard.press("ArrowRight")
    assert seen >= page.locator(".projector-stops .stop").count()


def test_the_timer_shows_and_does_nothing_else(page: Page, address: str) -> None:
    page.clock.install()
    opened(page, address + RIVER)
    time = page.get_by_role("timer")
    expect(time).to_have_text("1:00")
    page.get_by_label("Timer, which makes no sound").select_option("2 min")
    start = page.locator("shown-timer button")
    start.click()
    page.clock.run_for(30_000)
    expect(time).to_have_text("1:30")
    start.click()
    page.clock.run_for(30_000)
    expect(time).to_have_text("1:30")
    start.click()
    page.clock.run_for(200_000)
    expect(time).to_have_text("0:00")
    expect(start).to_have_text("Start", use_inner_text=True)
    assert (place(page), here(page)) == ("1 / 7", "#hello")
    start.click()
    expect(time).to_have_text("2:00")


def test_the_film_plays_to_its_pause_and_leads_to_the_stop(page: Page, address: str) -> None:
    opened(page, address + RIVER)
    told = page.locator("[data-shown] [data-stretch]")
    expect(told).to_have_text("Play the video, 0:00 to 1:05", use_inner_text=True)
    expect(page.locator("[data-shown] .projector-cover")).to_be_visible()
    page.keyboard.press("ArrowRight")
    assert not page.locator("video").is_visible()
    page.locator("[data-shown] [data-stretch]").click()
    expect(page.locator("video")).to_be_visible()
    assert not page.locator(".stop:visible").count()
    until(page, "video.currentTime > 44")
    page.evaluate("document.querySelector('video').currentTime = 64.5")
    until(page, "video.paused")
    expect(page.locator("video")).to_be_hidden()
    assert here(page) == "#guess"
    page.locator("[data-shown] [data-stretch]").click()
    page.keyboard.press("PageDown")  # in the film: back to the question
    assert page.locator("video").is_visible()  # the film has the keys while it has the focus
    page.locator("[data-next]").click()
    assert here(page) == "#guess"
    assert page.evaluate("document.querySelector('video').paused")


def test_the_pacer_is_large_and_nothing_is_kept(page: Page, address: str) -> None:
    opened(page, f"{address}{RIVER}#count-it")
    count = page.get_by_role("button", name="Count with me").first
    while not count.is_visible():
        page.keyboard.press("ArrowRight")
    count.click()
    pacer = page.get_by_role("dialog")
    pacer.get_by_role("button", name="We are ready").click()
    number = pacer.locator(".pacer-number b")
    assert (
        number.evaluate("each => parseFloat(getComputedStyle(each).fontSize) / innerHeight") > 0.2
    )
    assert pacer.locator(".pacer-bob").bounding_box()
    pacer.get_by_role("button", name="Slower").click()
    page.keyboard.press("PageDown")
    expect(pacer).to_be_visible()
    pacer.get_by_role("button", name="Close").click()
    page.get_by_text("More", exact=True).click()
    blocks = page.get_by_role("button", name="Blocks only")
    blocks.click()
    expect(blocks).to_have_attribute("aria-pressed", "true")
    assert page.evaluate("document.documentElement.hasAttribute('data-blocks-only')")
    assert page.evaluate("Object.entries(localStorage)") == []


def test_a_class_link_shows_its_stops_alone_and_a_reload_keeps_to_it(
    page: Page, address: str
) -> None:
    link = class_link(ClassLink(("guess", "count-it"), blocks_only=True), "river-walk")
    opened(page, f"{address}{RIVER}#{link}")
    assert (place(page), here(page)) == ("1 / 2", "#guess")
    assert page.evaluate("document.documentElement.hasAttribute('data-blocks-only')")
    page.keyboard.press("PageDown")
    page.reload()
    wait_for_all(page)
    assert (place(page)[:5], here(page)) == ("2 / 2", "#count-it")
    opened(page, f"{address}teachers.html")
    opened(page, f"{address}{RIVER}#{link}x")  # spoiled: the whole lesson
    assert place(page) == "1 / 7"


def test_blocks_only_of_the_device_is_respected(page: Page, address: str) -> None:
    assert numbers_of_rows(page, address) > 0
    opened(page, f"{address}river-walk/index.html")
    page.get_by_text("Safety and care").click()
    page.get_by_role("button", name="Blocks only").click()
    assert numbers_of_rows(page, address) == 0


def numbers_of_rows(page: Page, address: str) -> int:
    """How many stand on all screens of the comparison together."""
    opened(page, f"{address}{RIVER}#lunch")
    seen = 0
    while here(page) == "#lunch":
        assert page.locator("[data-shown]").count() > 0
        seen += page.locator("[data-shown] .holding b:visible").count()
        page.keyboard.press("ArrowRight")
    return seen


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_on_any_screen(page: Page, address: str, scheme: Any) -> None:
    page.emulate_media(color_scheme=scheme, reduced_motion="reduce")
    opened(page, address + RIVER)
    while True:
        page.keyboard.press("Enter")
        assert violations(page) == [], place(page)
        if page.locator("[data-next]").is_disabled():
            break
        page.keyboard.press("ArrowRight")


def test_a_screen_enlarged_twice_loses_nothing(page: Page, address: str) -> None:
    """1280 by 720 at 200 %, in CSS pixels (WCAG 2.2, 1.4.4)."""
    page.set_viewport_size({"width": 640, "height": 360})
    opened(page, f"{address}{RIVER}#lunch")
    for _ in range(12):
        assert page.evaluate(CUT) == [], place(page)
        page.evaluate("scrollTo(0, 1e6)")
        expect(page.locator("[data-next]")).to_be_in_viewport()
        page.keyboard.press("ArrowRight")


def test_without_a_script_the_stops_stand_one_under_the_other(
    page: Page, built_site: Path, address: str
) -> None:
    text = (built_site / RIVER).read_text("utf-8")
    assert len(re.findall(r'<section class="stop ', text)) == 7
    page.route("**/assets/*.js", lambda route: route.fulfill(body=""))
    page.goto(address + RIVER)
    assert page.locator(".stop:visible").count() == 7
    assert not page.locator("[data-bar]").is_visible()
    page.get_by_text("Show the working").first.click()
    expect(page.get_by_text("410 − 90 = 320")).to_be_visible()
