"""What those who list pages are told: a description of each, its languages by whole addresses, an icon."""

from __future__ import annotations

import json
import re
from pathlib import Path

from generator.present.pages.not_found import NOT_FOUND
from tests.html_page import pages

_ALTERNATE = re.compile(r'<link rel="alternate" hreflang="([^"]+)" href="([^"]+)">')
_ADDRESS = "https://kitchen.larkmead.example/"


def test_every_page_is_described(built_site: Path) -> None:
    for page in pages(built_site):
        described = re.search(r'<meta name="description" content="([^"]*)">', page.read_text())
        assert described, page
        assert len(described[1]) > 20, page


def test_every_page_has_an_icon(built_site: Path) -> None:
    for page in pages(built_site):
        icon = re.search(r'<link rel="icon" href="([^"]+)"', page.read_text())
        assert icon, page
        below = icon[1].removeprefix("/") if page.name == NOT_FOUND else icon[1]
        assert (page.parent / below).is_file(), page


def test_a_page_in_two_languages_names_both_and_one_for_all_the_rest(built_site: Path) -> None:
    """HTML Standard, 4.6.7.1; that a page names itself and whole addresses too is asked by those who list pages (M)."""
    expected = [
        ("en", f"{_ADDRESS}river-walk/index.html"),
        ("es", f"{_ADDRESS}es/river-walk/index.html"),
        ("x-default", f"{_ADDRESS}river-walk/index.html"),
    ]
    for folder in ("", "es/"):
        text = (built_site / folder / "river-walk/index.html").read_text()
        assert sorted(_ALTERNATE.findall(text)) == expected


def test_a_page_in_one_language_names_no_other(built_site: Path) -> None:
    assert not _ALTERNATE.search((built_site / "two-days/index.html").read_text())


def test_every_box_that_opens_says_what_it_holds(built_site: Path) -> None:
    """HTML Standard, 4.11.1: the first child of ``details`` is a ``summary``."""
    for page in pages(built_site):
        assert not re.search(r"<details\b[^>]*>\s*<(?!summary\b)", page.read_text()), page


def test_care_is_kept_with_a_lesson(built_site: Path) -> None:
    """Whoever is hurt may have no network; the page with all it loads, for each language its own."""
    for folder in ("", "es/"):
        lesson = built_site / folder / "river-walk"
        kept = {file["path"] for file in json.loads((lesson / "keep.json").read_text())["files"]}
        care = built_site / folder / "care.html"
        loaded = re.findall(r'<link rel="stylesheet" href="([^"]+)"', care.read_text())
        needed = {care, *(care.parent / one for one in loaded)}
        assert {one.resolve() for one in needed} <= {(lesson / one).resolve() for one in kept}
