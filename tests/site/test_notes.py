"""The teaching notes of the built demo: for adults, kept from search engines, and whole."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.html_page import having, read_page, text

LANGUAGES = {"en": "", "es": "es/"}
WHY = {
    "en": "For adults: why the count is not energy",
    "es": "Para adultos: por qué el conteo no es energía",
}


def notes(site: Path, language: str) -> list[Path]:
    found = sorted((site / LANGUAGES[language]).glob("*/notes.html"))
    assert found
    return found


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_real_computation_lies_in_a_closed_box(built_site: Path, language: str) -> None:
    """texts.md 1.11: it was one click from the child, and open to everyone."""
    for page in notes(built_site, language):
        [box] = having(read_page(page), "truth")
        assert box.tag == "details"
        assert box.get("open") is None
        assert text(box).startswith(WHY[language])
        outside = text(read_page(page)).replace(text(box), "")
        assert "METy" not in outside, page


@pytest.mark.parametrize("language", LANGUAGES)
def test_search_engines_are_asked_to_leave_the_notes_out(built_site: Path, language: str) -> None:
    found = (built_site / "sitemap.xml").read_text("utf-8")
    assert "index.html" in found or "/</loc>" in found
    assert "notes.html" not in found
    for page in notes(built_site, language):
        assert '<meta name="robots" content="noindex">' in page.read_text("utf-8")


@pytest.mark.parametrize(("language", "says"), [("en", "Teaching notes"), ("es", "Notas")])
def test_a_lesson_names_its_notes_quietly_at_its_end(
    built_site: Path, language: str, says: str
) -> None:
    for page in notes(built_site, language):
        lesson = read_page(page.with_name("index.html"))
        [link] = [one for one in lesson.iter("a") if (one.get("href") or "") == "notes.html"]
        assert text(link).startswith(says)
        assert "button" not in (link.get("class") or "").split()
        [section] = [one for one in lesson.iter("section") if link in one.iter()]
        assert (
            text(next(section.iter("h2")))
            == {"en": "For teachers", "es": "Para docentes"}[language]
        )
