"""A sheet bears one stamp, whether it is printed from its page or from its file, in either size and in large print."""

from __future__ import annotations

import re
from io import BytesIO
from pathlib import Path

import pytest
from pypdf import PdfReader

PAGES = ("worksheet", "answers", "cards", "notes")


def stamp_of_page(page: Path) -> str:
    found = re.search(r'<html [^>]*data-stamp="[^"]*\b([0-9A-Z]{6})"', page.read_text("utf-8"))
    assert found
    return found[1]


@pytest.mark.parametrize("name", PAGES)
@pytest.mark.parametrize("kind", ["a4", "large-letter"])
def test_page_and_file_bear_one_stamp(
    made_papers: Path, built_site: Path, name: str, kind: str
) -> None:
    papers = sorted(made_papers.rglob(f"{name}-{kind}.pdf"))
    assert len(papers) > 8
    for paper in papers:
        lesson = paper.relative_to(made_papers).parent.parent
        stamp = stamp_of_page(built_site / lesson / f"{name}.html")
        for sheet in PdfReader(BytesIO(paper.read_bytes())).pages:
            assert stamp in sheet.extract_text(), paper


@pytest.mark.parametrize("name", ["worksheet", "answers", "cards", "notes", "family"])
def test_a_file_says_where_to_ask_whether_it_still_holds(
    made_papers: Path, built_site: Path, name: str
) -> None:
    for paper in sorted(made_papers.rglob(f"{name}-a4.pdf")):
        sheets = PdfReader(BytesIO(paper.read_bytes())).pages
        words = "".join("".join(sheet.extract_text() for sheet in sheets).split())
        folder = paper.relative_to(made_papers).parts[0] == "es"
        asked = f"kitchen.larkmead.example/{'es/' if folder else ''}stamps.html"
        assert asked in words, paper
        assert (built_site / asked.partition("/")[2]).exists()
