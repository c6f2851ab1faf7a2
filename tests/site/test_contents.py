"""Long pages to read begin with a list of their parts, which is whole, and their tables' heads are in sentence case."""

from __future__ import annotations

from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from generator.present.words.prose import contents
from tests.html_page import having, pages, read_page, text

LANGUAGES = {"en": "On this page", "es": "En esta página"}


def parts(page: Element) -> list[tuple[str, str]]:
    """Address and words of each heading of the second rank in the page's text."""
    return [
        (f"#{heading.get('id')}", text(heading))
        for heading in page.iter("h2")
        if heading.get("id") and text(heading)
    ]


def listed(page: Element) -> list[tuple[str, str]]:
    """What the page's own list leads to."""
    return [
        (link.get("href") or "", text(link))
        for nav in having(page, "contents", "nav")
        for link in nav.iter("a")
    ]


def test_the_notes_list_all_their_parts(built_site: Path) -> None:
    found = sorted(built_site.rglob("notes.html"))
    assert len(found) > 6
    for file in found:
        page = read_page(file)
        assert listed(page) == parts(page), file
        assert len(listed(page)) > 10


@pytest.mark.parametrize("path", ["teachers.html", "sources.html", "care.html", "es/sources.html"])
def test_a_long_written_page_lists_its_parts(built_site: Path, path: str) -> None:
    page = read_page(built_site / path)
    assert listed(page) == parts(page)
    assert len(parts(page)) >= 4
    [nav] = having(page, "contents", "nav")
    assert nav.get("aria-label") == LANGUAGES["es" if path.startswith("es/") else "en"]
    assert next(nav.iter("summary")) is not None


def test_a_short_page_and_headings_without_an_address_are_not_listed() -> None:
    assert contents('<h2 id="a">A</h2><h2 id="b">B</h2>') == ()
    four = "".join(f'<h2 id="{name}">The <em>{name}</em> &amp; more</h2>' for name in "abcd")
    assert [(one.href, one.label) for one in contents(f"{four}<h2>none</h2>")] == [
        (f"#{name}", f"The {name} & more") for name in "abcd"
    ]


def test_every_head_of_a_table_begins_with_a_capital(built_site: Path) -> None:
    seen = 0
    for file in pages(built_site):
        for head in (th for table in read_page(file).iter("thead") for th in table.iter("th")):
            said = text(head)
            seen += bool(said)
            assert not said[:1].islower(), f"{file.relative_to(built_site)}: {said}"
    assert seen > 40
