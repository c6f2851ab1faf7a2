"""What those who list pages are told: a description of each, its languages by whole addresses, an icon."""

from __future__ import annotations

import json
import re
from pathlib import Path

from generator.present.pages.not_found import NOT_FOUND
from tests.html_page import pages, read_page, text

_ALTERNATE = re.compile(r'<link rel="alternate" hreflang="([^"]+)" href="([^"]+)">')
_ADDRESS = "https://kitchen.larkmead.example/"
_EMPTY_WORDS = {
    "here",
    "click here",
    "this",
    "more",
    "link",
    "aquí",
    "haz clic aquí",
    "más",
    "esto",
}


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


def test_every_page_fits_the_screen_it_is_on_and_has_a_title_of_its_own(built_site: Path) -> None:
    """What search engines' own guides ask of a page first (M): viewport, a title, one language."""
    titles: dict[str, Path] = {}
    for page in pages(built_site):
        root = read_page(page)
        named = {meta.get("name", ""): meta.get("content", "") for meta in root.iter("meta")}
        assert named["viewport"] == "width=device-width, initial-scale=1", page
        assert root.get("lang"), page
        title = "".join(root.iter("title").__next__().itertext())
        assert len(title) > 10, page
        assert title not in titles, (page, titles.get(title))
        titles[title] = page


def test_what_is_listed_may_be_found_and_what_may_not_be_found_is_not_listed(
    built_site: Path,
) -> None:
    """What is for the teacher, and what a host sends in the place of a page, is nothing to find."""
    listed = set(re.findall(r"<loc>([^<]+)</loc>", (built_site / "sitemap.xml").read_text()))
    there, barred = set(), set()
    for page in pages(built_site):
        address = f"{_ADDRESS}{page.relative_to(built_site).as_posix()}"
        there.add(address)
        if '<meta name="robots" content="noindex">' in page.read_text():
            barred.add(address)
    assert len(listed) > 10
    assert listed <= there - barred
    names = {address.rpartition("/")[2] for address in barred}
    assert names == {
        *(
            "notes.html",
            "projector.html",
            "codes.html",
            "lessons.html",
            "updates.html",
            "sheets.html",
            "stamps.html",
            "stop.html",
        ),
        NOT_FOUND,
    }


def test_every_link_says_where_it_leads_and_can_be_followed(built_site: Path) -> None:
    """WCAG 2.2, 2.4.4; a link with an address and words of its own is one a search engine follows too."""
    for page in pages(built_site):
        for link in read_page(page).iter("a"):
            says = text(link) or link.get("aria-label", "")
            pictured = " ".join(image.get("alt", "") for image in link.iter("img"))
            assert says or pictured.strip(), (page, link.attrib)
            assert says.casefold().strip(" .") not in _EMPTY_WORDS, (page, says)
            assert link.get("href", "").split(":")[0] not in {"", "javascript"}, (page, says)


def test_every_language_a_page_names_names_it_back(built_site: Path) -> None:
    """HTML Standard, 4.6.7.1; each by its whole address, itself among them, and a tag of BCP 47."""
    named = {
        f"{_ADDRESS}{page.relative_to(built_site).as_posix()}": dict(
            _ALTERNATE.findall(page.read_text())
        )
        for page in pages(built_site)
    }
    for address, others in named.items():
        assert set(others) in (set(), {"en", "es", "x-default"}), address
        assert not others or address in others.values(), address
        for other in others.values():
            assert named[other] == others, address
