"""A language that is written from the right mirrors every page; drawings and sums run from the left all the same."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.watched import OPEN_ALL, RUNS_OVER, violations
from tests.local_server import serving
from tests.mirrored_site import build_mirrored
from tests.site_project import ROOT

WIDTHS = (320, 390, 1280)
PAPER_WIDTH = 718
"""CSS pixels between the margins of A4, 10 mm each, at 96 to the inch."""
PHYSICAL = re.compile(
    r"^\s*(?:(?:padding|margin|border|inset)-(?:left|right)\b|left:|right:|text-align: (?:left|right)|float: (?:left|right))"
)
BACKWARDS = r"""() => {
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const text = walker.currentNode.data;
    for (const sum of text.matchAll(/\d[\d,.]*(?:[ \u00a0]*[−+÷×=≈][ \u00a0]*[\d(][\d,.]*)+|\d+\u00a0(?:kcal|mg|g)\b/g)) {
      const places = [];
      for (let at = sum.index; at < sum.index + sum[0].length; at++) {
        if (/\s/.test(text[at])) continue;
        const range = document.createRange();
        range.setStart(walker.currentNode, at);
        range.setEnd(walker.currentNode, at + 1);
        const { left, top, width } = range.getBoundingClientRect();
        if (width) places.push([left, top]);
      }
      window.sums = (window.sums ?? 0) + 1;
      if (places.some(([left, top], at) => at && Math.abs(top - places[at - 1][1]) < 14 && left < places[at - 1][0])) found.push(sum[0]);
    }
  }
  return found;
}"""
"""Sums, and numbers with their unit, of which a sign stands further to the left than the one before it."""
SIDES = """() => {
  const sides = element => { const own = getComputedStyle(element, '::before'); return [parseFloat(own.left), parseFloat(own.right)]; };
  return [...document.querySelectorAll('.thread > li, .stop-head')].map(sides);
}"""


@dataclass(frozen=True, slots=True)
class Seen:
    """What was seen of a page."""

    direction: str
    over: Mapping[int | str, int]
    """Pixels that it is too wide, by the width of the screen, and on paper."""
    backwards: tuple[str, ...]
    sums: int


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return build_mirrored(tmp_path_factory.mktemp("mirrored") / "project")


@pytest.fixture(scope="module")
def mirrored(browser: Browser, site: Path) -> Iterator[tuple[Page, str]]:
    """A page, and the address of the site."""
    with serving(site) as address, browser.new_context(locale="he-IL") as context:
        yield context.new_page(), address


@pytest.fixture(scope="module")
def seen(mirrored: tuple[Page, str], site: Path) -> dict[str, Seen]:
    """Every page by its path."""
    page, address = mirrored
    found = {}
    for file in sorted(site.rglob("*.html")):
        path = file.relative_to(site).as_posix()
        found[path] = look(page, address + path)
    return found


def look(page: Page, address: str) -> Seen:
    page.emulate_media(media="screen")
    page.set_viewport_size({"width": WIDTHS[0], "height": 800})
    page.goto(address)
    page.evaluate(OPEN_ALL)
    over: dict[int | str, int] = {}
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 800})
        over[width] = int(page.evaluate(RUNS_OVER))
    backwards = page.evaluate(BACKWARDS)
    page.emulate_media(media="print")
    page.set_viewport_size({"width": PAPER_WIDTH, "height": 1000})
    over["paper"] = int(page.evaluate(RUNS_OVER))
    backwards += page.evaluate(BACKWARDS)
    direction = page.evaluate("getComputedStyle(document.body).direction")
    return Seen(direction, over, tuple(backwards), page.evaluate("window.sums ?? 0"))


def test_every_page_is_written_from_the_right(seen: dict[str, Seen]) -> None:
    assert len(seen) > 30
    assert {path: one.direction for path, one in seen.items() if one.direction != "rtl"} == {}


def test_none_scrolls_sideways_or_runs_over_its_paper(seen: dict[str, Seen]) -> None:
    """WCAG 2.2, 1.4.10 Reflow."""
    over = {path: {at: by for at, by in one.over.items() if by > 0} for path, one in seen.items()}
    assert {path: by for path, by in over.items() if by} == {}


def test_every_sum_runs_from_the_left(seen: dict[str, Seen]) -> None:
    """Unicode Standard Annex #9: left alone, ``9 − 4 = 5`` would be shown as ``5 = 4 − 9`` there."""
    assert sum(one.sums for one in seen.values()) > 500
    assert {path: one.backwards for path, one in seen.items() if one.backwards} == {}


def test_the_thread_hangs_at_the_right(mirrored: tuple[Page, str]) -> None:
    page, address = mirrored
    page.emulate_media(media="screen")
    page.set_viewport_size({"width": 1280, "height": 800})
    page.goto(f"{address}river-walk/index.html")
    sides = page.evaluate(SIDES)
    assert len(sides) > 10
    assert all(right < left for left, right in sides)
    titles = page.locator(".stop-head h2").all()
    column = page.locator("ol.thread").bounding_box()
    assert column is not None
    for title in titles:
        box = title.bounding_box()
        assert box is not None
        assert box["x"] + box["width"] > column["x"] + column["width"] - 5


def test_drawings_film_and_entries_run_from_the_left(
    mirrored: tuple[Page, str], site: Path, built_site: Path
) -> None:
    page, address = mirrored
    page.goto(f"{address}river-walk/index.html")
    page.evaluate(OPEN_ALL)
    for part in ("svg", "video", ".blocks", "input[inputmode=decimal]"):
        found = page.locator(part)
        assert found.count(), part
        directions = set(
            found.evaluate_all("all => all.map(each => getComputedStyle(each).direction)")
        )
        assert directions == {"ltr"}, part
    drawing = "river-walk/plums.svg"
    assert (site / drawing).read_text("utf-8") == (built_site / drawing).read_text("utf-8")


def test_what_a_food_holds_is_printed_number_first(mirrored: tuple[Page, str]) -> None:
    page, address = mirrored
    page.goto(f"{address}river-walk/worksheet.html")
    held = page.locator(".food .value")
    assert held.count() > 4
    found = held.evaluate_all("all => all.map(each => getComputedStyle(each).direction)")
    assert set(found) == {"ltr"}


def test_the_first_side_stays_where_its_leaf_points(mirrored: tuple[Page, str]) -> None:
    page, address = mirrored
    page.set_viewport_size({"width": 1280, "height": 800})
    page.goto(f"{address}river-walk/index.html")
    first, second = (
        page.locator(f".sides .{side}").first.bounding_box() for side in ("first", "second")
    )
    assert first is not None
    assert second is not None
    assert first["x"] < second["x"]


def test_it_keeps_nobody_out(mirrored: tuple[Page, str]) -> None:
    page, address = mirrored
    page.set_viewport_size({"width": 390, "height": 844})
    page.goto(f"{address}two-days/index.html")
    assert violations(page) == []


def test_no_style_names_left_or_right_where_it_means_start_or_end() -> None:
    named = [
        f"{file.relative_to(ROOT)}:{number}: {line.strip()}"
        for file in sorted((ROOT / "theme").rglob("*.css"))
        if "vendor" not in file.parts
        for number, line in enumerate(file.read_text("utf-8").splitlines(), 1)
        if PHYSICAL.match(line)
    ]
    assert named == []
