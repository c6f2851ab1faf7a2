"""How many phone screens a stop takes to compare at, its rows found and folded, and a stop to move at."""

from __future__ import annotations

from collections.abc import Iterator

from playwright.sync_api import Page

from bench.measuring.browser import launched
from bench.measuring.demo import built_demo
from bench.measuring.files import lesson_pages
from bench.measuring.row import Case, NothingMeasuredError, Row, row
from bench.measuring.screens import PHONE
from tests.local_server import serving

FIND_ALL = """() => {
  const rows = [...document.querySelectorAll('form.gap-row[data-first]')];
  for (const form of rows) for (const name of ['gap', 'count']) {
    const entry = form.elements[name];
    if (!entry) continue;
    entry.value = form.dataset[name];
    entry.dispatchEvent(new Event('input', {bubbles: true}));
  }
}"""
HEIGHTS = "all => all.map(each => each.getBoundingClientRect().height)"
UNFOLDED = "form.gap-row:not([data-folded]) [name=gap]"


def rows(case: Case) -> Iterator[Row]:
    """The longest of each kind of stop in each lesson that has one."""
    site = built_demo()
    pages = lesson_pages(site)[: 1 if case.small else None]
    measured = 0
    with serving(site) as address, launched() as browser:
        for lesson in pages:
            page = browser.new_page(viewport={"width": PHONE["width"], "height": PHONE["height"]})
            path = lesson.relative_to(site).as_posix()
            for key, length in screens(page, address + path):
                measured += 1
                yield row(key, length, path)
            page.close()
    if not measured:
        raise NothingMeasuredError("no lesson has a stop to compare or to move at")


def screens(page: Page, address: str) -> Iterator[tuple[str, float]]:
    """The longest stop of each kind on a page, by the key of its goal.

    All rows are found, and the page comes again as whoever found them sees it.
    """
    page.goto(address)
    page.evaluate(FIND_ALL)
    page.reload()
    page.wait_for_load_state("networkidle")
    if left := page.locator(UNFOLDED).count():
        raise NothingMeasuredError(f"{left} rows did not fold on {address}")
    for key, stop in (("compare_screens", ".stop-compare"), ("move_screens", ".stop-move")):
        if heights := page.locator(stop).evaluate_all(HEIGHTS):
            yield key, max(heights) / PHONE["height"]
