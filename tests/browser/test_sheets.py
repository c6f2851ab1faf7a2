"""What is printed of the demo: on each sheet what it is and which of how many, and nothing on it is torn."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.printed_sheets import printed_sheets
from tests.qr_reader import read_code

PAPERS = ("A4", "Letter")
BOXES = """() => [...document.styleSheets].flatMap(sheet => [...sheet.cssRules])
  .filter(rule => rule instanceof CSSPageRule).flatMap(rule => [...rule.cssRules])
  .map(box => `${box.name}: ${box.style.content}`)"""
STAMPED = "getComputedStyle(document.documentElement).getPropertyValue('--stamp')"


@pytest.mark.parametrize("paper", PAPERS)
def test_no_table_of_a_day_is_torn(
    page: Page, pages: Callable[[str], list[Path]], paper: str
) -> None:
    """Its rows in a color of their own are all on the sheet with its heading."""
    path = next(one for one in pages("worksheet") if one.parent.name == "two-days")
    page.goto(path.as_uri())
    assert page.locator(".day").count() == 2
    page.evaluate(COLOURED)
    printed = printed_sheets(page.pdf(format=paper))
    for colour in ((0, 1, 0), (0, 0, 1)):
        assert sum(any(ink.colour == colour for ink in sheet.inks) for sheet in printed) == 1


COLOURED = """document.querySelectorAll(".of-day").forEach((day, at) => {
  for (const part of day.querySelectorAll("b, th, td")) part.style.color = at ? "#00f" : "#0f0";
})"""


@pytest.mark.parametrize("name", ["worksheet", "notes"])
def test_every_sheet_bears_stamp_and_number(
    page: Page, pages: Callable[[str], list[Path]], serve: Callable[[Path], str], name: str
) -> None:
    """By the margin boxes of CSS Paged Media Module Level 3, section 5."""
    path = pages(name)[0]
    page.goto(f"{serve(path.parent.parent)}{path.parent.name}/{name}.html")
    assert page.evaluate(BOXES) == [
        "bottom-left: var(--stamp)",
        'bottom-right: counter(page) " / " counter(pages)',
    ]
    assert re.search(r"\b[0-9A-Z]{6}\"$", page.evaluate(STAMPED))


@pytest.mark.parametrize("name", ["worksheet", "answers", "cards", "notes", "practice", "index"])
def test_every_page_of_a_lesson_has_its_stamp(
    pages: Callable[[str], list[Path]], name: str
) -> None:
    for path in pages(name):
        text = path.read_text(encoding="utf-8")
        assert re.search(r'<html [^>]*data-stamp="[^"]*\b[0-9A-Z]{6}"', text), path


def test_every_card_leads_to_the_stop_of_its_move(pages: Callable[[str], list[Path]]) -> None:
    for path in pages("cards"):
        codes = re.findall(r"<svg[^>]*class=\"qr\".*?</svg>", path.read_text(encoding="utf-8"))
        assert codes
        lesson = path.with_name("index.html").read_text(encoding="utf-8")
        for code in codes:
            address, _, stop = read_code(code).partition("#")
            assert address.endswith(f"{path.parent.name}/index.html")
            assert re.search(rf'class="[^"]*stop-move[^"]*" id="{stop}"', lesson), stop


@pytest.mark.parametrize("name", ["worksheet", "cards"])
def test_a_code_is_twenty_millimetres_wide(
    page: Page, pages: Callable[[str], list[Path]], name: str
) -> None:
    for path in pages(name):
        page.goto(path.as_uri())
        page.emulate_media(media="print")
        widths = page.locator("svg.qr").evaluate_all(
            "all => all.map(code => code.getBoundingClientRect().width)"
        )
        assert widths
        assert min(widths) >= 20 * 96 / 25.4 - 0.1, path


def test_no_sum_on_a_card_is_broken(page: Page, pages: Callable[[str], list[Path]]) -> None:
    for path in pages("cards"):
        page.goto(path.as_uri())
        page.emulate_media(media="print")
        assert page.evaluate(BROKEN) == [], path


BROKEN = """[...document.querySelectorAll(".for")].filter(line => {
  const sum = /\\d[^:;,]*÷ \\S+ = [\\d.,]+/.exec(line.textContent);
  const walk = document.createTreeWalker(line, NodeFilter.SHOW_TEXT), range = new Range();
  const tops = [];
  for (let at = 0, text; (text = walk.nextNode()); at += text.length) {
    const from = Math.max(sum.index, at), to = Math.min(sum.index + sum[0].length, at + text.length);
    if (from >= to) continue;
    range.setStart(text, from - at);
    range.setEnd(text, to - at);
    for (const box of range.getClientRects()) tops.push(box.top);
  }
  return Math.max(...tops) - Math.min(...tops) > 4;
}).map(line => line.textContent)"""


@pytest.mark.parametrize("width", [188, 196])  # millimetres between the margins of A4 and Letter
def test_cut_lines_meet_on_both_sides_of_the_paper(
    page: Page, pages: Callable[[str], list[Path]], width: int
) -> None:
    """Turned over, a line lies where it lay only if it is as far from the left edge as from the right."""
    pixels = round(width * 96 / 25.4)
    page.set_viewport_size({"width": pixels, "height": 1000})
    page.goto(pages("cards")[0].as_uri())
    page.emulate_media(media="print")
    left, middle, right = page.evaluate(
        """() => {
          const [first, second] = document.querySelectorAll(".card");
          const [one, other] = [first, second].map(card => card.getBoundingClientRect());
          return [one.left, (one.right + other.left) / 2, other.right];
        }"""
    )
    assert left == pytest.approx(pixels - right, abs=2.5)
    assert middle == pytest.approx(pixels / 2, abs=2.5)


@pytest.fixture
def pages(built_site: Path) -> Callable[[str], list[Path]]:
    """All pages of the demo's lessons of a name."""
    return lambda name: list(_of_lessons(built_site, name))


def _of_lessons(site: Path, name: str) -> Iterator[Path]:
    for cards in sorted(site.glob("**/cards.html")):
        yield cards.with_name(f"{name}.html")
