"""On a page of another language what is English is said to be, and links lead to what they say."""

from __future__ import annotations

from pathlib import Path
from xml.etree.ElementTree import Element

import pytest

from tests.html_page import having, one, pages, read_page, text
from tests.project import library


def said_in(element: Element, language: str) -> list[str]:
    """Texts of the elements below that say they are in a language."""
    return [text(each) for each in element.iter() if each.get("lang") == language]


def test_a_record_s_title_is_english_on_a_spanish_page(built_site: Path) -> None:
    """WCAG 3.1.2, language of parts (R): a voice that reads Spanish reads no English right."""
    records = {food.entry.record for food in library().foods.values()}
    found = 0
    for page in pages(built_site / "es"):
        for sources in having(read_page(page), "sources"):
            for told in sources.iter("dd"):
                if "FDC" in text(told):
                    found += 1
                    assert records.intersection(said_in(told, "en")), (page, text(told))
    assert found > 5


def test_no_title_is_marked_on_an_english_page(built_site: Path) -> None:
    page = read_page(built_site / "river-walk/index.html")
    found = list(having(page, "sources"))
    assert found
    assert [said_in(each, "en") for each in found if said_in(each, "en")] == []


@pytest.mark.parametrize(
    ("page", "says"),
    [
        ("river-walk/index.html", "Skip to the lesson"),
        ("es/river-walk/index.html", "Ir a la lección"),
        ("care.html", "Skip to the content"),
        ("index.html", "Skip to the content"),
        ("river-walk/notes.html", "Skip to the content"),
        ("es/teachers.html", "Ir al contenido"),
    ],
)
def test_the_way_past_the_header_names_what_it_leads_to(
    built_site: Path, page: str, says: str
) -> None:
    assert text(one(read_page(built_site / page), "skip")) == says
