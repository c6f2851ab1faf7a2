"""One question clears everything a site keeps on a device, and nothing of another site."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

LESSON = "river-walk/index.html"
GAP = "input[name=gap] >> nth=0"
KEYS = "Object.keys(localStorage).sort()"
CLEAR = "Clear everything on this device"
WORKERS = "navigator.serviceWorker.getRegistrations().then(found => found.length)"
FILL = """() => {
  for (const key of ['circle/river-walk', 'boat/river-walk', 'leaf/soup-night', 'device', 'captions', 'player', 'rows', 'pacer'])
    localStorage.setItem('plumline-2 / ' + key, '{"shape": "leaf"}');
  localStorage.setItem('plumline-1-square/river-walk', '{}'); // from before keys had a path
  localStorage.setItem('plumline-2 /other/ circle/river-walk', '{}');
  localStorage.setItem('theirs', 'x');
}"""
"""All that is kept, and two things that are none of this site's business."""
Open = Callable[[str], Page]


@pytest.fixture
def opened(page: Page, built_site: Path, serve: Callable[[Path], str]) -> Open:
    site = serve(built_site)

    def go(path: str) -> Page:
        page.goto(site + path)
        page.get_by_role("button", name=CLEAR).wait_for()
        return page

    return go


@pytest.mark.parametrize(
    "path",
    ["index.html", "care.html", "teachers.html", LESSON, "river-walk/notes.html",
     "river-walk/practice.html", "river-walk/transcript.html"],
)  # fmt: skip
def test_it_is_at_the_foot_of_every_page_for_a_screen(opened: Open, path: str) -> None:
    page = opened(path)
    expect(page.locator("footer").get_by_role("button", name=CLEAR)).to_be_visible()


def test_it_is_there_in_the_pages_language(
    page: Page, built_site: Path, serve: Callable[[Path], str]
) -> None:
    page.goto(serve(built_site) + "es/care.html")
    page.get_by_role("button", name="Borrar todo en este dispositivo").wait_for()


def test_nothing_is_cleared_before_the_question_is_answered(opened: Open) -> None:
    page = opened("care.html")
    page.evaluate(FILL)
    before = page.evaluate(KEYS)
    page.get_by_role("button", name=CLEAR).press("Enter")
    leave = page.get_by_role("group").get_by_role("button", name="Leave it")
    expect(leave).to_be_focused()  # what cannot be brought back is never one key away
    leave.press("Enter")
    expect(page.get_by_role("button", name=CLEAR)).to_be_focused()
    assert page.evaluate(KEYS) == before


def test_it_clears_everybody_and_every_choice_and_nothing_of_others(opened: Open) -> None:
    page = opened("care.html")
    page.evaluate(FILL)
    page.get_by_role("button", name=CLEAR).click()
    page.get_by_role("button", name="Clear it all").click()
    expect(page.locator("footer").get_by_role("status")).to_have_text(
        "Everything of this site is cleared from this device."
    )
    assert page.evaluate(KEYS) == ["plumline-2 /other/ circle/river-walk", "theirs"]
    with page.expect_navigation():
        page.get_by_role("button", name="Close").click()
    expect(page.get_by_role("button", name=CLEAR)).to_be_visible()


def test_it_empties_the_lesson_that_is_open(opened: Open) -> None:
    page = opened(LESSON)
    page.locator(GAP).fill("55")
    page.get_by_role("button", name=CLEAR).click()
    page.get_by_role("button", name="Clear it all").click()
    expect(page.locator(GAP)).to_have_value("")
    assert page.evaluate(KEYS) == []


def test_kept_lessons_and_their_worker_go_too(opened: Open) -> None:
    page = opened(LESSON)
    page.locator("keep-lesson summary").click()
    page.get_by_role("button", name="Keep it").click()
    page.get_by_role("button", name="Remove it").wait_for()
    page.get_by_role("button", name=CLEAR).click()
    page.get_by_role("button", name="Clear it all").click()
    page.get_by_role("button", name="Close").wait_for()
    assert page.evaluate("caches.keys()") == []
    assert page.evaluate(WORKERS) == 0


def test_it_clears_in_a_folder_too_where_nothing_can_be_kept(page: Page, built_site: Path) -> None:
    page.goto((built_site / "river-walk/practice.html").as_uri())
    page.evaluate("localStorage.clear()")
    page.evaluate(f"localStorage.setItem('plumline-2 {built_site.as_posix()}/ rows', '{{}}')")
    page.get_by_role("button", name=CLEAR).click()
    page.get_by_role("button", name="Clear it all").click()
    page.get_by_role("button", name="Close").wait_for()
    assert page.evaluate(KEYS) == []


def test_each_of_its_states_is_accessible(opened: Open, axe: Callable[[Page], list[str]]) -> None:
    page = opened("care.html")
    page.get_by_role("button", name=CLEAR).click()
    assert axe(page) == []
    page.get_by_role("button", name="Clear it all").click()
    page.get_by_role("button", name="Close").wait_for()
    assert axe(page) == []
