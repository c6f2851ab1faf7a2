"""The front page of a few lessons: the first is at hand, each shows what this device knows of it, and the width is used."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from generator.steps.run import begin
from tests.made import write_files
from tests.site_project import copy_project, small_lesson, write_lesson

Serve = Callable[[Path], str]
ENTRIES = ".lessons > li"


@pytest.fixture
def site(built_site: Path, serve: Serve) -> str:
    """The demo's address."""
    return serve(built_site)


def keep(page: Page, key: str) -> None:
    """Puts something under a key of the site, as a page of a lesson does."""
    page.evaluate('key => localStorage.setItem(key, \'{"here": "walk"}\')', key)


def marks(page: Page) -> dict[str, list[str]]:
    """By lesson: what is said of it on this device."""
    found: dict[str, list[str]] = page.locator(ENTRIES).evaluate_all(
        "all => Object.fromEntries(all.map(each => [each.dataset.lesson,"
        " [...each.querySelectorAll('.mark strong')].map(word => word.textContent)]))"
    )
    return {lesson: words for lesson, words in found.items() if words}


@pytest.mark.parametrize("path", ["index.html", "es/index.html"])
def test_the_first_lesson_is_on_a_phones_first_screen(page: Page, site: str, path: str) -> None:
    page.goto(site + path)
    box = page.locator(f"{ENTRIES} h2").first.bounding_box()
    assert box is not None
    assert box["y"] + box["height"] <= 844


@pytest.mark.parametrize(
    ("path", "words"), [("index.html", "Begin here"), ("es/index.html", "Empieza aquí")]
)
def test_begin_here_is_said_of_the_first_lesson_alone(
    page: Page, site: str, path: str, words: str
) -> None:
    page.goto(site + path)
    begin = page.get_by_role("link", name=words)
    expect(begin).to_have_count(1)
    first = page.locator(f"{ENTRIES} h2 a").first
    assert begin.get_attribute("href") == first.get_attribute("href")
    assert page.locator(ENTRIES).first.locator(".begin").count() == 1
    box = begin.bounding_box()
    assert box is not None
    assert box["height"] >= 44


def test_a_lesson_that_was_begun_is_marked_in_a_word(page: Page, site: str) -> None:
    page.goto(f"{site}soup-night/index.html")
    page.locator(".stop h2").nth(1).focus()
    page.goto(f"{site}index.html")
    assert marks(page) == {"soup-night": ["begun"]}
    expect(page.locator(f"{ENTRIES}[data-lesson=soup-night]")).to_contain_text("sodium · begun")
    page.goto(f"{site}es/index.html")
    assert marks(page) == {"soup-night": ["empezada"]}


def test_who_began_the_first_lesson_is_led_on(page: Page, site: str) -> None:
    page.goto(f"{site}index.html")
    first = page.locator(ENTRIES).first.get_attribute("data-lesson")
    keep(page, f"plumline-2 / circle/{first}")
    page.reload()
    expect(page.locator(".begin a")).to_contain_text("Go on")
    assert page.get_by_role("link", name="Begin here").count() == 0


def test_only_what_whoever_is_here_began_is_marked(page: Page, site: str) -> None:
    page.goto(f"{site}index.html")
    keep(page, "plumline-2 / kettle/soup-night")
    keep(page, "plumline-2 / square/market-drinks")
    keep(page, "plumline-2 /elsewhere/ boat/two-days")
    page.reload()
    assert marks(page) == {}


def test_a_kept_lesson_is_marked_until_it_is_removed(page: Page, site: str) -> None:
    page.goto(f"{site}river-walk/index.html")
    page.get_by_text("Keep this lesson", exact=True).click()
    page.get_by_role("button", name="Keep it").click()
    page.get_by_text("This lesson is kept here", exact=True).wait_for()
    page.goto(f"{site}index.html")
    entry = page.locator(f"{ENTRIES}[data-lesson=river-walk]")
    expect(entry.locator(".mark .kept")).to_have_text("kept here")
    below = page.locator("kept-lessons")
    last, listed = page.locator(ENTRIES).last.bounding_box(), below.bounding_box()
    assert last is not None
    assert listed is not None
    assert listed["y"] > last["y"]  # it pushes no lesson down
    below.get_by_role("button").click()
    expect(entry.locator(".mark .kept")).to_have_count(0)


def test_a_device_that_keeps_nothing_lists_the_lessons_all_the_same(page: Page, site: str) -> None:
    page.add_init_script(
        "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no') }})"
    )
    page.goto(f"{site}index.html")
    assert page.locator(f"{ENTRIES}:visible").count() > 1
    assert marks(page) == {}


@pytest.mark.parametrize(("width", "columns"), [(320, 1), (390, 1), (768, 2), (1280, 3), (2000, 3)])
def test_lessons_stand_side_by_side_where_there_is_room(
    page: Page, site: str, width: int, columns: int
) -> None:
    page.set_viewport_size({"width": width, "height": 900})
    page.goto(f"{site}index.html")
    tops = page.locator(ENTRIES).evaluate_all(
        "all => all.map(each => each.getBoundingClientRect().top)"
    )
    assert tops.count(tops[0]) == columns
    rem = page.evaluate("parseFloat(getComputedStyle(document.documentElement).fontSize)")
    lines = page.locator("main p:visible").evaluate_all("all => all.map(each => each.clientWidth)")
    assert max(lines) <= 38 * rem
    assert page.evaluate("document.documentElement.scrollWidth") == width


def test_few_lessons_are_not_filtered_but_energy_can_be_left_out(page: Page, site: str) -> None:
    """A family may need fewer numbers about food (product.md, Care), however few lessons there are."""
    page.goto(f"{site}index.html")
    assert page.locator("select, [type=search]").count() == 0
    every = page.locator(ENTRIES).count()
    about = page.locator(f"{ENTRIES}[data-topics~=energy]")
    page.get_by_label("Only lessons without energy").check()
    assert page.url.endswith("#topic=-energy")
    assert page.locator(f"{ENTRIES}:visible").count() == every - about.count() > 0
    expect(about.first).to_be_hidden()
    page.reload()
    expect(page.get_by_label("Only lessons without energy")).to_be_checked()
    expect(about.first).to_be_hidden()
    page.get_by_label("Only lessons without energy").uncheck()
    assert page.locator(f"{ENTRIES}:visible").count() == every


@pytest.fixture(scope="module")
def with_a_draft(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What a preview serves of a front page by hand that lists the lessons, a draft among them."""
    folder = tmp_path_factory.mktemp("draft")
    root = copy_project(folder / "project", lessons=False)
    write_lesson(root, "small", small_lesson(title="Unbelievably small", draft=True))
    site = begin(root, folder, preview=True).site()
    intro = "<h1>Welcome</h1><p>{lessons}</p>"
    write_files(site.shared(), folder / "served")
    page = site.page("index.html", "", intro, headed=True)
    (folder / "served/index.html").write_text(page, "utf-8")
    return folder / "served"


def test_a_list_by_hand_with_a_draft_fits_the_narrowest_phone(
    page: Page, with_a_draft: Path, serve: Serve
) -> None:
    cover = '<svg xmlns="http://www.w3.org/2000/svg"/>'  # no lesson was made here
    page.route("**/*.svg", lambda route: route.fulfill(body=cover, content_type="image/svg+xml"))
    page.set_viewport_size({"width": 320, "height": 700})
    page.goto(serve(with_a_draft) + "index.html")
    expect(page.locator("main td").nth(1)).to_contain_text("Draft, only in this preview")
    assert page.evaluate("document.documentElement.scrollWidth") == 320
    widest = page.locator("main td, main th").evaluate_all(
        "all => Math.max(...all.map(each => each.getBoundingClientRect().right))"
    )
    assert widest <= 320


@pytest.mark.parametrize("javascript", [True, False])
def test_larkmead_stands_on_the_front_page_in_its_colours_and_says_nothing(
    browser: Browser, site: str, javascript: bool
) -> None:
    lit = {}
    for scheme in ("light", "dark"):
        context = browser.new_context(java_script_enabled=javascript, color_scheme=scheme)
        page = context.new_page()
        page.goto(f"{site}index.html")
        drawing = page.locator(".village")
        assert drawing.get_attribute("aria-hidden") == "true"
        assert len(drawing.inner_html().encode()) < 3000
        lit[scheme] = drawing.locator(".lit").evaluate("each => getComputedStyle(each).fill")
        plum = page.locator(f"{ENTRIES} a").first.evaluate("each => getComputedStyle(each).color")
        assert lit[scheme] == plum
        context.close()
    assert lit["light"] != lit["dark"]


def test_larkmead_is_flatter_on_a_phone(page: Page, site: str) -> None:
    heights = []
    for width in (390, 1280):
        page.set_viewport_size({"width": width, "height": 844})
        page.goto(f"{site}index.html")
        box = page.locator(".village").bounding_box()
        assert box is not None
        assert box["width"] == width
        heights.append(box["height"])
    assert heights[0] < 0.75 * heights[1]


def test_larkmead_stands_nowhere_else(built_site: Path) -> None:
    drawn = {
        file.relative_to(built_site).as_posix()
        for file in built_site.rglob("*.html")
        if 'class="village"' in file.read_text("utf-8")
    }
    assert drawn == {"index.html", "es/index.html"}
