"""Documents of the demo take few sheets, none ends on one that is all but empty or prints what only a screen needs."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.printed_sheets import Sheet, printed_sheets

PAPERS = ("A4", "Letter")
LEAST = 0.15
"""Of the last sheet's height, where there is more than one: less is not worth a sheet."""
OF_LESSONS = ("worksheet", "answers", "cards", "notes", "practice", "transcript", "index")
OF_SITE = ("index", "care", "sources", "teachers")
MOST = {"worksheet": 2, "answers": 2, "notes": 4}
"""Sheets that a child works at, and that an adult carries."""
LONGER = {"two-days/worksheet": 3}
"""Two days of all that an adult ate and did fill the first sheet, the names of meals beside their foods; a comparison
and a walk follow them."""
LETTERS = {"notes": 10}
"""Points of the smallest letters; teaching notes are read by adults at arm's length, all else has 12."""


@pytest.mark.parametrize("name", OF_LESSONS)
def test_a_lessons_page_takes_few_sheets_and_the_last_is_worth_its_paper(
    page: Page, built_site: Path, serve: Callable[[Path], str], name: str
) -> None:
    at = serve(built_site)
    for cards in sorted(built_site.glob("**/cards.html")):
        lesson = cards.parent.relative_to(built_site).as_posix()
        page.goto(f"{at}{lesson}/{name}.html")
        for paper in PAPERS:
            sheets = printed(page, paper)
            most = LONGER.get(f"{lesson}/{name}", MOST.get(name, len(sheets)))
            assert len(sheets) <= most, (lesson, paper)


@pytest.mark.parametrize("name", OF_SITE)
def test_the_last_sheet_of_the_sites_page_is_worth_its_paper(
    page: Page, built_site: Path, serve: Callable[[Path], str], name: str
) -> None:
    at = serve(built_site)
    for folder in ("", "es/"):
        page.goto(f"{at}{folder}{name}.html")
        for paper in PAPERS:
            printed(page, paper)


@pytest.mark.parametrize("language", ["", "es/"])
def test_notes_say_what_they_leave_to_the_screen(
    page: Page, built_site: Path, language: str
) -> None:
    page.goto((built_site / f"{language}river-walk/notes.html").as_uri())
    told = page.locator(".on-paper-alone")
    assert not told.is_visible()
    assert page.locator("#sources").is_visible()
    page.emulate_media(media="print")
    assert told.is_visible()
    assert not page.locator("#sources").is_visible()
    assert page.locator("#care").is_visible()


def printed(page: Page, paper: str) -> list[Sheet]:
    """The sheets of a page that is open, none of which has small letters, and the last of which is filled."""
    sheets = printed_sheets(page.pdf(format=paper))
    assert len(sheets) == 1 or sheets[-1].filled >= LEAST, (page.url, paper)
    least = min(ink.letters for sheet in sheets for ink in sheet.inks if ink.letters)
    assert least >= LETTERS.get(Path(page.url).stem, 12), (page.url, paper)
    return sheets
