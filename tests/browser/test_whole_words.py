"""Words of a narrow screen stay whole, and what belongs together stays together."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

Serve = Callable[[Path], str]
PROSE = [
    f"{folder}{name}.html" for folder in ("", "es/") for name in ("teachers", "sources", "care")
]
BROKEN = """of => [...document.querySelectorAll(of)].flatMap(cell => {
  const walk = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT), range = new Range(), found = [];
  for (let text; (text = walk.nextNode()); )
    for (const word of text.data.matchAll(/\\p{L}+/gu)) {
      range.setStart(text, word.index);
      range.setEnd(text, word.index + word[0].length);
      if (new Set([...range.getClientRects()].map(box => Math.round(box.top))).size > 1) found.push(word[0]);
    }
  return found;
})"""


@pytest.fixture
def site(page: Page, built_site: Path, serve: Serve) -> str:
    """The demo's address, on the narrowest screen."""
    page.set_viewport_size({"width": 320, "height": 800})
    return serve(built_site)


@pytest.mark.parametrize("path", PROSE)
def test_no_word_of_a_table_is_broken(page: Page, site: str, path: str) -> None:
    page.goto(site + path)
    page.locator("th, td").evaluate_all(  # as in a browser that cannot hyphenate
        "all => all.forEach(cell => cell.style.hyphens = 'manual')"
    )
    assert page.evaluate(BROKEN, ".prose :is(th, td)") == []


def test_a_broken_word_is_seen(page: Page, site: str) -> None:
    page.goto(site)
    page.locator("h1").evaluate(
        "each => { each.textContent = 'Of multiplications'; each.style.width = '3em'; }"
    )
    assert page.evaluate(BROKEN, "h1") == ["multiplications"]


def test_a_side_of_a_worksheet_stands_beside_its_pattern(page: Page, site: str) -> None:
    page.goto(f"{site}es/garden-baskets/worksheet.html")
    tops = page.locator(".which").evaluate(
        """each => [...each.querySelectorAll('.swatch')].map(pattern => {
          const [one, name] = [pattern, pattern.nextElementSibling].map(part => part.getBoundingClientRect());
          return one.top < name.bottom && name.top < one.bottom && name.left > one.right;
        })"""
    )
    assert tops == [True, True]


def test_the_steps_of_a_day_have_the_width_of_a_phone(page: Page, site: str) -> None:
    page.goto(f"{site}two-days/worksheet.html")
    whole, steps = (
        page.locator(part).first.evaluate("each => each.clientWidth")
        for part in (".day-steps", ".day-steps > div")
    )
    assert steps == whole


@pytest.mark.parametrize("path", ["two-days/index.html", "es/garden-baskets/index.html"])
def test_what_opens_keeps_clear_of_the_next_button(page: Page, site: str, path: str) -> None:
    page.goto(site + path)
    page.locator("lesson-ending button").wait_for()
    for closed in page.locator(
        "details:has(+ p > .button), details:has(+ .on), lesson-ending details"
    ).all():
        words = closed.locator("summary").evaluate(
            """each => { const range = new Range(); range.selectNodeContents(each);
              return Math.max(...[...range.getClientRects()].map(box => box.bottom)); }"""
        )
        assert closed.evaluate("each => each.getBoundingClientRect().bottom") - words >= 4


def test_a_number_of_a_day_stays_with_its_unit_beside_a_long_name(page: Page, site: str) -> None:
    page.goto(f"{site}two-days/worksheet.html")
    page.locator(".day th[scope=row]").first.evaluate(
        "each => { each.textContent = 'Breakfast burrito with potatoes and peppers, 1 burrito of the large ones'; }"
    )
    number = page.locator(".day td").first
    lines = number.evaluate(
        """each => { const range = new Range(); range.selectNodeContents(each);
          return new Set([...range.getClientRects()].map(box => Math.round(box.top))).size; }"""
    )
    assert lines == 1
    assert number.evaluate("each => parseFloat(getComputedStyle(each).paddingInlineStart)") > 0


def test_a_name_in_a_cell_ends_before_what_it_names(page: Page, site: str) -> None:
    page.goto(f"{site}garden-baskets/answers.html")
    cells = page.locator(".what-if td[data-name]")
    assert cells.count()
    for cell in cells.all():
        name = cell.get_attribute("data-name")
        assert cell.evaluate("each => getComputedStyle(each, '::before').content").endswith(' "'), (
            name
        )


def test_on_paper_nothing_stands_above_answers_that_are_closed(page: Page, site: str) -> None:
    page.goto(f"{site}garden-baskets/index.html")
    above = page.locator("what-if form + h3, what-if .of-all")
    assert above.count() == 2
    page.emulate_media(media="print")
    assert [each.is_visible() for each in above.all()] == [False, False]
    page.locator("what-if details").evaluate_all(
        "all => all.forEach(each => { each.open = true; })"
    )
    assert [each.is_visible() for each in above.all()] == [True, True]


def test_a_printed_card_of_a_move_keeps_its_edge_and_its_sheet(page: Page, site: str) -> None:
    """CSS Fragmentation 3 and CSS Backgrounds 3: a shade outside the box would lie on the sheet before."""
    page.goto(f"{site}river-walk/index.html")
    page.emulate_media(media="print")
    card = page.locator(".moves .card").first
    style = card.evaluate(
        "each => [getComputedStyle(each).breakInside, getComputedStyle(each).boxShadow]"
    )
    assert style[0] == "avoid"
    assert "inset" in style[1]
