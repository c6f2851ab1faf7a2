"""Where a film stands, in a real Chromium: offered again after a reload, named on the way on, and its end."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.still_page import write_page
from tests.browser.watched import until, wait_for_all

KEEP = "localStorage.setItem('plumline-2 / boat/still', JSON.stringify({{film: '{}'{}}}))"


@pytest.fixture
def address(tmp_path: Path, serve: Callable[[Path], str]) -> str:
    """Address of the still page: four seconds of film, pauses at 1 and twice at 2."""
    write_page(tmp_path)
    page = tmp_path / "index.html"
    parting = '<li><section class="stop" id="parting"><h2 tabindex="-1">One last question</h2></section></li>'
    html = page.read_text("utf-8")
    page.write_text(html.replace("</ol>\n<button", f"{parting}</ol>\n<button"), encoding="utf-8")
    return serve(tmp_path)


def offer(page: Page) -> Locator:
    return page.locator("pause-player .go-on-film")


def opened(page: Page, address: str, *, film: str = "", more: str = "") -> Page:
    """The page with a place kept before it is opened."""
    page.goto(address)
    page.evaluate(KEEP.format(film, more))
    page.evaluate("localStorage.setItem('plumline-2 / player', '{}')")
    page.reload()
    wait_for_all(page)
    until(page, "video.readyState === 4")
    return page


def go_on(page: Page, stop: str) -> Locator:
    return page.locator(f"#{stop} [data-go-on]")


def test_a_way_on_says_where_it_goes_until_the_film_was_there(page: Page, address: str) -> None:
    opened(page, address)
    expect(go_on(page, "think")).to_have_text("Go on from 0:01")
    expect(go_on(page, "lunch")).to_have_text("Go on")  # it leads to the other stop of its moment
    page.locator("video").press("Space")
    expect(page.get_by_role("heading", name="Think")).to_be_focused()
    expect(go_on(page, "think")).to_have_text("Go on")
    page.evaluate("document.querySelector('video').currentTime = 0.2")
    expect(go_on(page, "think")).to_have_text("Go on from 0:01")


def test_a_place_is_kept_where_the_film_is_halted(page: Page, address: str) -> None:
    opened(page, address)
    page.evaluate("document.querySelector('input').click()")  # no pauses
    page.locator("video").press("Space")
    until(page, "video.currentTime > 1.4")
    page.evaluate("document.querySelector('video').pause()")
    page.wait_for_function("JSON.parse(localStorage['plumline-2 / boat/still']).film > 1.4")
    expect(offer(page)).to_have_count(0)


def test_who_comes_back_goes_on_there(page: Page, address: str) -> None:
    opened(page, address, film="61.5")
    expect(offer(page)).to_have_text("Go on from 1:01")
    page.evaluate(
        "window.sought = []; document.querySelector('video').addEventListener('seeking', () => sought.push(1))"
    )
    offer(page).press("Enter")
    until(page, "window.sought.length > 0")
    expect(offer(page)).to_have_count(0)


def test_a_question_that_was_open_is_there_first(page: Page, address: str) -> None:
    opened(page, address, film="8.0")
    page.evaluate("document.querySelector('pause-player').points = [{at: 7.9, stop: 'think'}]")
    offer(page).press("Enter")
    expect(page.get_by_role("heading", name="Think")).to_be_focused()
    assert page.evaluate("document.querySelector('video').paused")


def test_a_question_that_is_done_is_not_asked_again(page: Page, address: str) -> None:
    opened(page, address, film="8.0", more=", 'done think': 'yes'")
    page.evaluate("document.querySelector('pause-player').points = [{at: 7.9, stop: 'think'}]")
    offer(page).press("Enter")
    until(page, "video.ended")
    expect(page.get_by_role("heading", name="One last question")).to_be_focused()


def test_the_place_is_of_whoever_is_here_and_cleared_with_the_lesson(
    page: Page, address: str
) -> None:
    opened(page, address, film="8.0")
    page.get_by_role("button", name="Clear what I wrote here").click()
    expect(offer(page)).to_have_count(0)
    page.reload()
    wait_for_all(page)
    expect(offer(page)).to_have_count(0)
    page.evaluate(KEEP.format("8.0", ""))
    page.evaluate("localStorage.setItem('plumline-2 / device', '{\"shape\": \"kettle\"}')")
    page.reload()
    wait_for_all(page)
    expect(offer(page)).to_have_count(0)


def test_the_end_is_said_and_leads_on(page: Page, address: str) -> None:
    opened(page, address)
    page.get_by_role("button", name="Play from 0:03").press("Enter")
    expect(page.get_by_role("heading", name="One last question")).to_be_focused()
    said = page.locator("pause-player .band:visible")
    expect(said).to_have_text("That was the whole video. One last question")
    expect(said.get_by_role("link")).to_have_attribute("href", "#parting")
    assert page.evaluate("JSON.parse(localStorage['plumline-2 / boat/still']).film") in ("", None)


def test_who_is_at_work_when_it_ends_stays_there(page: Page, address: str) -> None:
    opened(page, address)
    page.get_by_role("button", name="Play from 0:03").press("Enter")
    gap = page.locator("input[name=gap]").first
    gap.focus()
    until(page, "video.ended")
    expect(page.locator("pause-player .band:visible")).to_contain_text("That was the whole video.")
    expect(gap).to_be_focused()


def test_without_its_file_nothing_offers_to_play_it(
    page: Page, address: str, complaints: list[str]
) -> None:
    page.route("**/*.mp4", lambda route: route.fulfill(status=404))
    page.goto(address)
    page.evaluate(KEEP.format("8.0", ""))
    page.reload()
    expect(page.locator("button[data-play-from]")).to_be_hidden()
    expect(offer(page)).to_be_hidden()
    expect(go_on(page, "think")).to_have_text("Go on")
    assert complaints
    complaints.clear()
