"""Printed pages: the right number of sheets on both papers, nothing cut off, nothing lost in grey."""

from __future__ import annotations

import re
from collections.abc import Callable
from math import ceil
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from tests.paper_lesson import every_move, lessons_of_moves

PAPERS = ("A4", "Letter")
POINTS = {"A4": (595, 842), "Letter": (612, 792)}
"""Width and height in points: ISO 216 (210 × 297 mm) and ANSI/ASME Y14.1 size A, from memory."""


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Callable[[int], Path]:
    return lessons_of_moves(tmp_path_factory)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("moves", [1, 4, 5])
def test_cards_print_four_to_a_sheet(
    page: Page, made: Callable[[int], Path], moves: int, paper: str
) -> None:
    page.goto(f"{made(moves).as_uri()}/cards.html")
    pages = printed(page, paper)
    assert len(pages) == ceil(moves / 4)
    assert set(pages) == {POINTS[paper]}


def test_every_move_of_the_library_fits_its_card(page: Page, made: Callable[[int], Path]) -> None:
    page.goto(f"{made(len(every_move())).as_uri()}/cards.html")
    page.emulate_media(media="print")
    assert page.locator(".card").count() == len(every_move())
    assert page.evaluate(CUT_OFF) == []


def test_every_card_of_the_demo_fits(page: Page, built_site: Path) -> None:
    """Headings of stops and Spanish texts are longer than those of the lesson of every move."""
    sheets = sorted(built_site.glob("**/cards.html"))
    assert sheets
    for sheet in sheets:
        page.goto(sheet.as_uri())
        page.emulate_media(media="print")
        assert page.evaluate(CUT_OFF) == [], sheet


def test_the_count_is_the_largest_thing_on_a_card(page: Page, made: Callable[[int], Path]) -> None:
    page.goto(f"{made(4).as_uri()}/cards.html")
    page.emulate_media(media="print")
    sizes = page.evaluate(
        "[...document.querySelectorAll('.card *:not(svg *)')]"
        ".map(e => [e.className, parseFloat(getComputedStyle(e).fontSize)])"
    )
    largest = max(size for _, size in sizes)
    assert {name for name, size in sizes if size == largest} == {"count"}
    assert largest == pytest.approx(30 * 96 / 25.4, abs=1)  # 30 mm


@pytest.mark.parametrize("name", ["cards", "worksheet", "answers"])
def test_nothing_runs_over_and_nothing_is_small(
    page: Page, made: Callable[[int], Path], name: str
) -> None:
    page.goto(f"{made(5).as_uri()}/{name}.html")
    page.emulate_media(media="print")
    assert page.evaluate(RUNS_OVER) == []
    assert page.evaluate(SMALLEST) >= 16  # CSS pixels: 12 pt


@pytest.mark.parametrize("name", ["cards", "worksheet", "answers"])
def test_text_is_dark_enough_on_white_paper(
    page: Page, made: Callable[[int], Path], name: str
) -> None:
    page.goto(f"{made(5).as_uri()}/{name}.html")
    page.emulate_media(media="print")
    colours = page.evaluate(COLOURS)
    assert colours
    # WCAG 2.2, 1.4.3: 4.5 to 1; on white, which has luminance 1.
    assert min(1.05 / (luminance(colour) + 0.05) for colour in colours) >= 4.5


def test_sides_differ_by_pattern_alone(page: Page, made: Callable[[int], Path]) -> None:
    page.goto(f"{made(5).as_uri()}/worksheet.html")
    page.emulate_media(media="print")
    swatches = page.locator(".holding .swatch")
    fills = swatches.locator("rect").evaluate_all("all => all.map(e => getComputedStyle(e).fill)")
    assert set(fills) == {'url("#first")', 'url("#second")'}
    assert fills[::2] == ['url("#first")'] * 5
    assert swatches.nth(0).screenshot() != swatches.nth(1).screenshot()


@pytest.mark.parametrize("paper", PAPERS)
def test_a_worksheet_wastes_no_page(page: Page, made: Callable[[int], Path], paper: str) -> None:
    page.goto(f"{made(1).as_uri()}/worksheet.html")
    assert len(printed(page, paper)) <= 2


@pytest.mark.parametrize("name", ["cards", "worksheet", "answers"])
def test_the_preview_reads_well_on_a_phone(
    page: Page,
    made: Callable[[int], Path],
    serve: Callable[[Path], str],
    axe: Callable[[Page], list[str]],
    name: str,
) -> None:
    page.set_viewport_size({"width": 320, "height": 640})
    page.goto(f"{serve(made(5).parent)}print/{name}.html")
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    assert axe(page) == []


def test_the_button_prints(page: Page, made: Callable[[int], Path]) -> None:
    page.add_init_script("window.print = () => { window.printed = true; }")
    page.goto(f"{made(1).as_uri()}/cards.html")
    page.get_by_role("button", name="Print").click()
    assert page.evaluate("window.printed")


def test_without_javascript_there_is_no_button_that_does_nothing(
    browser: Browser, made: Callable[[int], Path]
) -> None:
    with browser.new_context(java_script_enabled=False) as context:
        page = context.new_page()
        page.goto(f"{made(1).as_uri()}/cards.html")
        assert page.get_by_role("button").count() == 0
        assert page.locator(".card").is_visible()


CUT_OFF = """[...document.querySelectorAll(".card")].filter(card => {
  const end = card.getBoundingClientRect().bottom;
  const sheet = card.closest(".sheet").getBoundingClientRect().bottom;
  return end > sheet + 0.5 || [...card.children].some(e => e.getBoundingClientRect().bottom > end);
}).map(card => card.querySelector("h2").textContent)"""

RUNS_OVER = """[...document.querySelectorAll(".sheet *:not(svg *):not(.patterns)")].filter(e => {
  const box = e.getBoundingClientRect(), sheet = e.closest(".sheet").getBoundingClientRect();
  return box.right > sheet.right + 0.5 || e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0;
}).map(e => e.outerHTML.slice(0, 80))"""

WITH_TEXT = """[...document.querySelectorAll(".sheet *:not(svg *)")]
  .filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()))"""
SMALLEST = f"Math.min(...{WITH_TEXT}.map(e => parseFloat(getComputedStyle(e).fontSize)))"
COLOURS = f"[...new Set({WITH_TEXT}.map(e => getComputedStyle(e).color))]"


def printed(page: Page, paper: str) -> list[tuple[int, int]]:
    """Width and height in points of every page the browser prints.

    Chromium writes page objects uncompressed, so the names of ISO 32000-1, 7.7.3.3 can be read.
    """
    text = page.pdf(format=paper)
    boxes = re.findall(rb"/Type /Page\b.*?/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]", text, re.DOTALL)
    counts = re.findall(rb"/Type /Pages\b[^>]*?/Count (\d+)", text)
    assert len(boxes) == max(map(int, counts))
    return [(int(float(width)), int(float(height))) for width, height in boxes]


def luminance(colour: str) -> float:
    """Relative luminance of an ``rgb()`` colour, WCAG 2.2."""
    parts = [int(part) / 255 for part in re.findall(r"\d+", colour)[:3]]
    red, green, blue = (
        part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
