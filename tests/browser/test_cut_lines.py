"""Where cards are cut: by lines through the sheet, the same on both sides of the paper, with no corner left over."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from generator.present.pages.paper import cards_a_sheet
from tests.browser.test_paper import CUT_OFF, PAPERS
from tests.paper_lesson import every_move, lessons_of_moves
from tests.printed_sheets import Box, Sheet, printed_sheets

CARDS = {1: 1, 2: 2, 3: 3, 4: 4, 5: 3, 6: 3, 7: 4, 8: 4, 9: 3, 10: 4}
"""How many parts a sheet has for so many cards: as large as they can be on no more sheets than four to each takes."""
WIDE = 186
"""Millimetres that fit between the margins of both papers."""
IN_BANDS = """([parts, left]) => {
  for (const sheet of document.querySelectorAll(".parted")) {
    const cards = [...sheet.children];
    cards.forEach((card, at) => { if (at < left || at >= left + parts) card.remove(); });
    sheet.className = `parted in-${parts}`;
  }
}"""


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Callable[[int], Path]:
    return lessons_of_moves(tmp_path_factory)


@pytest.mark.parametrize(("cards", "parts"), CARDS.items())
def test_a_sheet_is_parted_into_the_fewest_parts(cards: int, parts: int) -> None:
    assert cards_a_sheet(cards) == parts


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("moves", [3, 5, 8])
def test_lines_lie_where_they_lie_on_the_other_side(
    page: Page, made: Callable[[int], Path], moves: int, paper: str
) -> None:
    """Flipped on its long edge, a sheet's left is its back's right, and what is high stays high."""
    page.goto(f"{made(moves).as_uri()}/cards.html")
    sheets = printed_sheets(page.pdf(format=paper))
    upright, level = lines(sheets[0])
    assert upright, level
    assert level[-1] - level[0] > 230
    assert upright[-1] - upright[0] == pytest.approx(WIDE, abs=1)
    for front in sheets:
        for back in sheets:
            turned = sorted(back.width - at for at in lines(back)[0])
            assert lines(front)[0] == pytest.approx(turned, abs=0.5)
            low = lines(back)[1]  # the last sheet may hold fewer
            assert lines(front)[1][: len(low)] == pytest.approx(
                low[: len(lines(front)[1])], abs=0.2
            )


def test_no_corner_of_the_demo_is_left_over(page: Page, built_site: Path) -> None:
    """As wide and as high as all cards are, they leave no more than their strip of stop signs."""
    for path in sorted(built_site.glob("**/cards.html")):
        page.goto(path.as_uri())
        page.emulate_media(media="print")
        used = page.evaluate(
            "[...document.querySelectorAll('.cards')].map(sheet => [...sheet.querySelectorAll('.card')]"
            ".map(card => card.getBoundingClientRect()).reduce((all, box) => all + box.width * box.height, 0)"
            " / (sheet.clientWidth * sheet.clientHeight))"
        )
        assert min(used) > 0.88, path
        page.emulate_media(media="screen")


@pytest.mark.parametrize("parts", [1, 2, 3])
def test_every_move_of_the_library_fits_a_larger_card(
    page: Page, made: Callable[[int], Path], parts: int
) -> None:
    for left in range(0, 4, parts):
        page.goto(f"{made(len(every_move())).as_uri()}/cards.html")
        page.evaluate(IN_BANDS, [parts, min(left, 4 - parts)])
        page.emulate_media(media="print")
        assert page.locator(".card").count() > 31 / 4 * parts - parts
        assert page.evaluate(CUT_OFF) == []
        assert page.evaluate(HALVES) == []


HALVES = """[...document.querySelectorAll(".card")].filter(card => {
  const own = card.getBoundingClientRect();
  return [...card.querySelectorAll("*:not(svg *)")].some(part => {
    const box = part.getBoundingClientRect();
    return box.height && (box.bottom > own.bottom + 0.5 || box.right > own.right + 0.5);
  });
}).map(card => card.querySelector("h2").textContent)"""


def lines(sheet: Sheet) -> tuple[list[float], list[float]]:
    """Where lines stand from the left, and where they lie from above; those closer than a millimetre are one."""
    boxes = [ink.box for ink in sheet.inks if not ink.letters]
    upright = [_middle(box, 0) for box in boxes if _thin(box, 0) and _long(box, 1, 40)]
    level = [_middle(box, 1) for box in boxes if _thin(box, 1) and _long(box, 0, 80)]
    return _apart(upright), _apart(level)


def _middle(box: Box, axis: int) -> float:
    return (box[axis] + box[axis + 2]) / 2


def _thin(box: Box, axis: int) -> bool:
    return box[axis + 2] - box[axis] < 0.6


def _long(box: Box, axis: int, least: float) -> bool:
    return box[axis + 2] - box[axis] > least


def _apart(places: list[float]) -> list[float]:
    found: list[float] = []
    for place in sorted(places):
        if not found or place - found[-1] > 1:
            found.append(place)
    return found
