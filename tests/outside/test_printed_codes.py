"""Whoever points a phone at a printed page comes to the page that the address beside the code names."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.html_page import having, read_page, text
from tests.outside.addresses import ADDRESS, leads_somewhere
from tests.outside.pictures import codes_on_sheets, words_on_sheets

PAPERS = ("A4", "Letter")


@pytest.fixture
def at(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def lessons(site: Path) -> list[str]:
    found = [one.parent.relative_to(site).as_posix() for one in sorted(site.glob("**/cards.html"))]
    assert found
    return found


@pytest.mark.parametrize("name", ["worksheet.html", "answers.html", "worksheet.html#large-print"])
def test_a_sheet_leads_back_to_its_lesson(page: Page, built_site: Path, at: str, name: str) -> None:
    for lesson in lessons(built_site):
        page.goto(f"{at}{lesson}/{name}")
        file = built_site / lesson / name.partition("#")[0]
        *_, told = having(read_page(file), "stamp")
        for paper in PAPERS:
            [first, *rest] = codes_on_sheets(page.pdf(format=paper))
            typed = text(told).split(" · ")[-1]
            assert first == [f"https://{typed}index.html"], (lesson, paper)
            assert first == [f"{ADDRESS}{lesson}/index.html"]
            assert not any(rest)
        assert leads_somewhere(built_site, first[0])


def test_each_card_leads_to_where_its_moves_are_counted(
    page: Page, built_site: Path, at: str
) -> None:
    page.emulate_media(media="print")
    for lesson in lessons(built_site):
        page.goto(f"{at}{lesson}/cards.html")
        shown = page.locator(".qr:visible").count()
        for paper in PAPERS:
            read = [one for sheet in codes_on_sheets(page.pdf(format=paper)) for one in sheet]
            assert len(read) == shown > 0, (lesson, paper)
            assert all(one.startswith(f"{ADDRESS}{lesson}/index.html#") for one in read)
        assert all(leads_somewhere(built_site, one) for one in set(read))


@pytest.mark.parametrize("folder", ["", "es/"])
def test_the_sheet_of_all_lessons_leads_to_the_site(
    page: Page, built_site: Path, at: str, folder: str
) -> None:
    page.goto(f"{at}{folder}lessons.html")
    for paper in PAPERS:
        printed = page.pdf(format=paper)
        codes = [one for sheet in codes_on_sheets(printed) for one in sheet]
        assert codes == [f"{ADDRESS}{folder}"]
        assert codes[0] in words_on_sheets(printed)
    assert leads_somewhere(built_site, codes[0])


def test_a_code_that_is_cut_off_is_not_read(page: Page, built_site: Path) -> None:
    """A reader that forgave everything would find nothing."""
    file = built_site / lessons(built_site)[0] / "worksheet.html"
    page.goto(file.as_uri())
    page.locator(".head .qr").evaluate("(code) => code.setAttribute('viewBox', '0 9 37 37')")
    assert not any(codes_on_sheets(page.pdf(format="A4")))
