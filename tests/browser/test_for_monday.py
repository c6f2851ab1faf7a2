"""A teacher who opens the notes of a lesson finds what she needs on Monday without scrolling."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.browser.watched import RUNS_OVER
from tests.html_page import having, read_page

WANTED = (
    "index.html",
    "#class-link",
    "projector.html",
    "worksheet.html",
    "answers.html",
    "cards.html",
    "papers/packet-a4.pdf",
    "papers/packet-letter.pdf",
    "../codes.html",
)
"""Addresses of what stands there, where the lesson has it."""
WIDE, PHONE = {"width": 1280, "height": 720}, {"width": 320, "height": 640}


@pytest.fixture
def at(built_site: Path, serve: Callable[[Path], str]) -> str:
    return serve(built_site)


def test_it_is_all_in_sight(page: Page, built_site: Path, at: str) -> None:
    notes = sorted(built_site.glob("**/notes.html"))
    assert len(notes) == 9
    for file in notes:
        path = file.relative_to(built_site).as_posix()
        page.set_viewport_size(WIDE)
        page.goto(f"{at}{path}")
        links = page.locator(".for-monday a").all()
        named = {link.get_attribute("href") for link in links}
        there = {one for one in WANTED if one[0] == "#" or (file.parent / one).is_file()}
        assert there <= named, path
        assert len(there) >= len(WANTED) - 1  # a lesson without moves has no cards
        assert all(inside(link.bounding_box(), WIDE) for link in links), path
        assert page.evaluate("scrollY") == 0
        page.set_viewport_size(PHONE)
        assert page.evaluate(RUNS_OVER) <= 0
        assert inside(page.locator(".for-monday h2").bounding_box(), PHONE), path


def inside(box: object, screen: dict[str, int]) -> bool:
    assert isinstance(box, dict)
    return (
        box["x"] >= 0
        and box["y"] >= 0
        and box["x"] + box["width"] <= screen["width"]
        and box["y"] + box["height"] <= screen["height"]
    )


def test_it_stays_off_paper(built_site: Path, page: Page) -> None:
    page.goto((built_site / "river-walk/notes.html").as_uri())
    page.emulate_media(media="print")
    assert not page.locator(".for-monday").is_visible()


@pytest.mark.parametrize("language", ["", "es/"])
def test_none_of_its_links_is_dead(built_site: Path, language: str) -> None:
    for file in (built_site / language).glob("*/notes.html"):
        (block,) = having(read_page(file), "for-monday")
        for link in block.iter("a"):
            assert (file.parent / (link.get("href", "").split("#")[0] or file.name)).is_file(), (
                link.get("href")
            )
