"""Learners on one device keep their work apart by things of Larkmead, and a broken store breaks no page."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from generator.present.pictures.plums.plum import PLUM

LESSON = "river-walk/index.html"
KEYS = "Object.keys(localStorage).sort()"
GAP = "input[name=gap] >> nth=0"

THROWS = """Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError') }})"""
THROWS_ON_EVERY_CALL = """for (const name of ['getItem', 'setItem', 'removeItem', 'clear', 'key'])
  Storage.prototype[name] = () => { throw new DOMException('no', 'SecurityError') }"""
FULL = (
    """Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError') }"""
)
SPOILED = """for (const key of ['device', 'player', 'captions', 'circle/river-walk', 'boat/river-walk'])
  localStorage.setItem('plumline-2 / ' + key, '{"shape": [1], "here": 7')"""
STRANGE = """localStorage.setItem('plumline-2 / device', '{"shape": "constructor"}');
localStorage.setItem('plumline-2 / circle/river-walk', '[null, {"done watch-1": true}]')"""
THINGS = ("boat", "kettle", "wheel", "leaf", "pebble", "spoon")
FILLED = """row => {
  const plum = getComputedStyle(document.querySelector('.fruit')).fill;
  return [...row.querySelectorAll('button')].filter(one => getComputedStyle(one).backgroundColor === plum)
    .map(one => one.textContent);
}"""


@pytest.fixture
def lesson(page: Page, built_site: Path, serve: Callable[[Path], str]) -> Page:
    page.goto(serve(built_site) + LESSON)
    page.locator(".who").wait_for()
    return page


def opened(page: Page) -> Locator:
    page.locator(".who").click()
    return page.get_by_role("group", name="Who is here?")


def pick(page: Page, thing: str) -> None:
    row = opened(page)
    with page.expect_navigation():
        row.get_by_role("button", name=thing, exact=True).click()
    page.locator(".who").wait_for()


def test_a_boat_is_there_without_a_choice(lesson: Page) -> None:
    """A word beside the button says it, and the plum has it for a leaf."""
    here = lesson.get_by_role("button", name="Here: boat")
    expect(here).to_have_text("Here: boat")
    expect(here.locator("svg .fruit")).to_have_attribute("d", PLUM)
    assert here.locator("svg .thing path").count() == 2
    assert lesson.evaluate(KEYS) == []


def test_it_is_said_in_spanish_too(
    page: Page, built_site: Path, serve: Callable[[Path], str]
) -> None:
    page.goto(f"{serve(built_site)}es/{LESSON}")
    page.get_by_role("button", name="Aquí: barca").click()
    row = page.get_by_role("group", name="¿Quién está aquí?")
    names = ["barca", "tetera", "rueda", "hoja", "piedra", "cuchara"]
    assert row.locator("[aria-pressed]").all_inner_texts() == names
    expect(row.get_by_role("button", name="Borrar todo lo que hizo “barca”")).to_be_visible()


def test_six_things_are_drawn_and_no_two_alike(lesson: Page) -> None:
    choices = opened(lesson).locator("[aria-pressed]")
    assert choices.all_inner_texts() == list(THINGS)
    drawings = [one.locator("svg").inner_html() for one in choices.all()]
    assert len(set(drawings)) == 6


def test_each_thing_keeps_its_own_answers(lesson: Page) -> None:
    lesson.locator(GAP).fill("55")
    pick(lesson, "leaf")
    expect(lesson.get_by_role("button", name="Here: leaf")).to_be_visible()
    expect(lesson.locator(GAP)).to_have_value("")
    lesson.locator(GAP).fill("66")
    pick(lesson, "boat")
    expect(lesson.locator(GAP)).to_have_value("55")


def test_it_clears_one_thing_in_every_lesson_and_no_other_after_a_question(lesson: Page) -> None:
    lesson.locator(GAP).fill("55")
    pick(lesson, "kettle")
    lesson.locator(GAP).fill("66")
    for key in ("kettle/soup-night", "square/market-drinks"):  # and what was kept as before
        lesson.evaluate(f"localStorage.setItem('plumline-2 / {key}', '{{}}')")
    before = lesson.evaluate(KEYS)
    row = opened(lesson)
    row.get_by_role("button", name="Clear all that kettle did").press("Enter")
    leave = row.get_by_role("button", name="Leave it")
    expect(leave).to_be_focused()  # what cannot be brought back is never one key away
    leave.press("Enter")
    assert lesson.evaluate(KEYS) == before
    row.get_by_role("button", name="Clear all that kettle did").click()
    row.get_by_role("button", name="Clear it").click()
    expect(row.get_by_role("status")).to_have_text("All that kettle did is cleared.")
    expect(row.get_by_role("button", name="Clear all that kettle did")).to_be_focused()
    expect(lesson.locator(GAP)).to_have_value("")
    kept = lesson.evaluate(KEYS)
    assert "plumline-2 / boat/river-walk" in kept
    assert not [key for key in kept if "kettle" in key or "square" in key]


def test_a_question_that_nobody_answered_is_taken_back(lesson: Page) -> None:
    row = opened(lesson)
    row.get_by_role("button", name="Clear all that boat did").click()
    lesson.keyboard.press("Escape")
    expect(row).to_be_hidden()
    lesson.locator(".who").click()
    expect(row.get_by_role("button", name="Clear all that boat did")).to_be_visible()
    expect(row.get_by_role("button", name="Clear it")).to_have_count(0)


def test_one_button_is_filled_and_what_clears_stands_apart(lesson: Page) -> None:
    """The thing that is here, also while it is asked; nothing that closes stands beside what clears."""
    row = opened(lesson)
    assert row.evaluate(FILLED) == ["boat"]
    clear = row.get_by_role("button", name="Clear all that boat did")
    own = clear.bounding_box()
    others = [one.bounding_box() for one in row.locator("[aria-pressed]").all()]
    assert own
    assert all(box and box["y"] + box["height"] + 44 < own["y"] for box in others)
    clear.click()
    assert row.evaluate(FILLED) == ["boat"]


def test_the_row_closes_with_escape_and_gives_the_focus_back(lesson: Page) -> None:
    opener = lesson.get_by_role("button", name="Here: boat")
    opener.focus()
    lesson.keyboard.press("Enter")
    row = lesson.get_by_role("group", name="Who is here?")
    expect(row).to_be_visible()
    expect(opener).to_have_attribute("aria-expanded", "true")
    lesson.keyboard.press("Tab")
    expect(row.get_by_role("button", name="boat", exact=True)).to_be_focused()
    lesson.keyboard.press("Escape")
    expect(row).to_be_hidden()
    expect(opener).to_be_focused()


@pytest.mark.parametrize(("width", "rows"), [(320, 2), (390, 2), (1280, 1)])
@pytest.mark.parametrize("path", [LESSON, f"es/{LESSON}"])
def test_the_things_are_in_the_page_and_nothing_lies_over_them(
    page: Page,
    built_site: Path,
    serve: Callable[[Path], str],
    path: str,
    width: int,
    rows: int,
) -> None:
    """A thumb needs 44 pixels: WCAG 2.5.5 (R)."""
    page.set_viewport_size({"width": width, "height": 800})
    page.goto(serve(built_site) + path)
    opener = page.locator(".who")
    opener.click()
    assert page.locator("dialog[open]").count() == 0
    row = page.locator(".things")
    boxes = [box for one in row.locator("[aria-pressed]").all() if (box := one.bounding_box())]
    assert len(boxes) == 6
    assert len({box["y"] for box in boxes}) == rows
    assert all(box["width"] >= 44 and box["height"] >= 44 for box in boxes)
    above, whole, title = (one.bounding_box() for one in (opener, row, page.locator("h1")))
    assert above
    assert whole
    assert title
    assert min(above["width"], above["height"]) >= 44
    assert above["y"] + above["height"] <= whole["y"]
    assert whole["y"] + whole["height"] <= title["y"]
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    cut = "each => each.scrollWidth > each.clientWidth"
    assert not any(one.evaluate(cut) for one in row.locator("button").all())


def test_every_state_of_the_row_is_accessible(
    lesson: Page, axe: Callable[[Page], list[str]]
) -> None:
    row = opened(lesson)
    assert axe(lesson) == []
    row.get_by_role("button", name="Clear all that boat did").click()
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
    page.get_by_role("button", name="Clear all that").click()
    page.get_by_role("button", name="Clear it").click()
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
    page.get_by_role("button", name="Here: boat").click()
    page.get_by_role("button", name="Clear all that boat did").click()
    page.get_by_role("button", name="Clear it").click()
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
