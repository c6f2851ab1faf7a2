"""Two learners on one device keep their work apart by shapes, and a broken store breaks no page."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

LESSON = "river-walk/index.html"
KEYS = "Object.keys(localStorage).sort()"
GAP = "input[name=gap] >> nth=0"

THROWS = """Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError') }})"""
THROWS_ON_EVERY_CALL = """for (const name of ['getItem', 'setItem', 'removeItem', 'clear', 'key'])
  Storage.prototype[name] = () => { throw new DOMException('no', 'SecurityError') }"""
FULL = (
    """Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError') }"""
)
SPOILED = """for (const key of ['device', 'player', 'captions', 'circle/river-walk'])
  localStorage.setItem('plumline-2 / ' + key, '{"shape": [1], "here": 7')"""
STRANGE = """localStorage.setItem('plumline-2 / device', '{"shape": "pentagon"}');
localStorage.setItem('plumline-2 / circle/river-walk', '[null, {"done watch-1": true}]')"""


@pytest.fixture
def lesson(page: Page, built_site: Path, serve: Callable[[Path], str]) -> Page:
    page.goto(serve(built_site) + LESSON)
    page.locator(".who").wait_for()
    return page


def pick(page: Page, shape: str) -> None:
    page.get_by_role("button", name="Your shape").click()
    with page.expect_navigation():
        page.get_by_role("group", name="Pick your shape").get_by_role(
            "button", name=shape, exact=True
        ).click()
    page.locator(".who").wait_for()


def test_a_circle_is_there_without_a_choice(lesson: Page) -> None:
    expect(lesson.get_by_role("button", name="Your shape: circle")).to_be_visible()
    assert lesson.evaluate(KEYS) == []


def test_each_shape_keeps_its_own_answers(lesson: Page) -> None:
    lesson.locator(GAP).fill("55")
    pick(lesson, "leaf")
    expect(lesson.get_by_role("button", name="Your shape: leaf")).to_be_visible()
    expect(lesson.locator(GAP)).to_have_value("")
    lesson.locator(GAP).fill("66")
    pick(lesson, "circle")
    expect(lesson.locator(GAP)).to_have_value("55")


def test_one_tap_clears_one_shape_in_every_lesson_and_no_other(lesson: Page) -> None:
    lesson.locator(GAP).fill("55")
    pick(lesson, "square")
    lesson.locator(GAP).fill("66")
    lesson.evaluate("localStorage.setItem('plumline-2 / square/soup-night', '{}')")
    lesson.get_by_role("button", name="Your shape").click()
    lesson.get_by_role("button", name="Erase what square wrote").click()
    expect(lesson.get_by_role("group", name="Pick your shape").get_by_role("status")).to_have_text(
        "What square wrote is erased."
    )
    expect(lesson.locator(GAP)).to_have_value("")
    kept = lesson.evaluate(KEYS)
    assert "plumline-2 / circle/river-walk" in kept
    assert not [key for key in kept if "square" in key]


def test_the_row_closes_with_escape_and_gives_the_focus_back(lesson: Page) -> None:
    opener = lesson.get_by_role("button", name="Your shape")
    opener.focus()
    lesson.keyboard.press("Enter")
    row = lesson.get_by_role("group", name="Pick your shape")
    expect(row).to_be_visible()
    expect(opener).to_have_attribute("aria-expanded", "true")
    lesson.keyboard.press("Tab")
    expect(row.get_by_role("button", name="circle", exact=True)).to_be_focused()
    lesson.keyboard.press("Escape")
    expect(row).to_be_hidden()
    expect(opener).to_be_focused()


@pytest.mark.parametrize("width", [320, 390, 1280])
def test_the_shapes_are_one_row_in_the_page_and_nothing_lies_over_it(
    lesson: Page, width: int
) -> None:
    """A thumb needs 44 pixels: WCAG 2.5.5 (R)."""
    lesson.set_viewport_size({"width": width, "height": 700})
    lesson.get_by_role("button", name="Your shape").click()
    assert lesson.locator("dialog[open]").count() == 0
    row = lesson.get_by_role("group", name="Pick your shape")
    boxes = [one.bounding_box() for one in row.locator("[aria-pressed]").all()]
    assert [box["y"] for box in boxes if box] == [boxes[0]["y"] if boxes[0] else 0] * 4
    assert all(box and box["width"] >= 44 and box["height"] >= 44 for box in boxes)
    whole = row.bounding_box()
    title = lesson.locator("h1").bounding_box()
    assert whole
    assert title
    assert whole["y"] + whole["height"] <= title["y"]
    assert lesson.evaluate("document.documentElement.scrollWidth") <= width


def test_the_open_row_is_accessible(lesson: Page, axe: Callable[[Page], list[str]]) -> None:
    lesson.get_by_role("button", name="Your shape").click()
    assert axe(lesson) == []


@pytest.mark.parametrize(
    "broken",
    [THROWS, THROWS_ON_EVERY_CALL, FULL, SPOILED, STRANGE],
    ids=["absent", "forbidden", "full", "spoiled", "strange"],
)
def test_a_broken_store_breaks_no_page(
    page: Page, built_site: Path, serve: Callable[[Path], str], broken: str
) -> None:
    """The watched page counts every error: there is none, and the calculator answers."""
    page.add_init_script(broken)
    page.goto(serve(built_site) + LESSON)
    page.locator(".who").click()
    page.get_by_role("button", name="Erase what").click()
    page.keyboard.press("Escape")
    page.locator("[aria-current=step]").wait_for()
    page.locator(GAP).fill("1")
    page.locator("[data-check]").first.click()
    expect(page.locator("[data-band]").first).not_to_be_empty()


def test_nothing_of_it_leaves_the_device(
    page: Page, built_site: Path, serve: Callable[[Path], str]
) -> None:
    asked: list[str] = []
    page.on("request", lambda request: asked.append(f"{request.method} {request.url}"))
    page.goto(serve(built_site) + LESSON)
    page.locator(".who").wait_for()
    page.locator(GAP).fill("734")
    pick(page, "leaf")
    assert [
        one for one in asked if not one.startswith("GET") or "734" in one or "leaf" in one
    ] == []


def test_two_sites_on_one_host_keep_their_own_answers(
    page: Page, built_site: Path, tmp_path: Path, serve: Callable[[Path], str]
) -> None:
    for name in ("a", "b"):
        (tmp_path / name).symlink_to(built_site)
    host = serve(tmp_path)
    for name, answer in (("a", "55"), ("b", "66")):
        page.goto(f"{host}{name}/{LESSON}")
        page.locator(".who").wait_for()
        expect(page.locator(GAP)).to_have_value("")
        page.locator(GAP).fill(answer)
    page.goto(f"{host}a/{LESSON}")
    expect(page.locator(GAP)).to_have_value("55")
    page.get_by_role("button", name="Your shape").click()
    page.get_by_role("button", name="Erase what circle wrote").click()
    page.goto(f"{host}b/{LESSON}")
    expect(page.locator(GAP)).to_have_value("66")


def test_a_site_in_a_folder_keeps_its_own_answers(
    page: Page, built_site: Path, complaints: list[str]
) -> None:
    page.goto((built_site / "river-walk/practice.html").as_uri())
    page.evaluate("localStorage.clear()")
    page.goto((built_site / LESSON).as_uri())
    page.locator(GAP).fill("55")
    kept = page.evaluate(KEYS)
    assert kept
    assert all(key.startswith(f"plumline-2 {built_site.as_posix()}/ ") for key in kept)
    complaints.clear()  # Chromium reads no captions from a folder


def test_what_was_kept_before_keys_had_a_path_is_carried_over(lesson: Page) -> None:
    lesson.locator(GAP).fill("55")
    lesson.evaluate("""() => { for (const key of Object.keys(localStorage)) {
      localStorage.setItem(key.replace('plumline-2 / ', 'plumline-1-'), localStorage.getItem(key));
      localStorage.removeItem(key);
    } }""")
    assert [key[:11] for key in lesson.evaluate(KEYS)] == ["plumline-1-"]
    lesson.reload()
    expect(lesson.locator(GAP)).to_have_value("55")
    assert lesson.evaluate(KEYS) == ["plumline-2 / circle/river-walk"]
