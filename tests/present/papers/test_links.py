"""Where pages link to papers as files: those that are there, and how large each is."""

from __future__ import annotations

import re
from pathlib import Path
from zipfile import ZipFile

from generator.model.papers import PaperWord
from generator.present.papers.links import papers_on_page
from generator.present.papers.paper import PaperFile, Size
from generator.present.views.paper_files import PacketView, PaperFilesView
from generator.present.words.say import Say
from tests.html_page import read_page
from tests.project import library

LABEL = re.compile(r"PDF.*, ([\d,]+)\s?kB(?:, (?:English|Español))?")


def file(name: PaperWord, *, large: bool = False) -> PaperFile:
    path = f"soup/papers/{name}{'-large' if large else ''}-a4.pdf"
    return PaperFile(name, "worksheet_title", (), Size.A4, large, path)


def say(language: str) -> Say:
    return Say(library().words[language])


def test_each_link_says_what_it_is_for_which_paper_in_which_language_and_how_large() -> None:
    files = {
        file(PaperWord.WORKSHEET): 81_250,
        file(PaperWord.WORKSHEET, large=True): 99,
        file(PaperWord.CARDS): 5000,
    }
    told = {
        language: [
            link.label.replace("\u00a0", " ")
            for part in papers_on_page("worksheet.html", files, say(language))
            if isinstance(part, PaperFilesView)
            for paper in part.papers
            for link in paper.files
        ]
        for language in ("en", "es")
    }
    assert told == {
        "en": ["PDF, A4, English, 81 kB", "PDF in large print, A4, English, 1 kB"],
        "es": [
            "PDF, tamaño A4, Español, 81 kB",
            "PDF en letra grande, tamaño A4, Español, 1 kB",
        ],
    }


def test_the_notes_alone_have_the_packet_apart() -> None:
    files = {file(PaperWord.PACKET): 1000}
    for page, apart in (("notes.html", 1), ("cards.html", 0)):
        parts = list(papers_on_page(page, files, say("en")))
        assert sum(isinstance(one, PacketView) for one in parts) == apart
        assert sum(isinstance(one, PaperFilesView) for one in parts) == 1


def test_what_is_not_made_is_linked_nowhere() -> None:
    for page in ("worksheet.html", "answers.html", "cards.html", "notes.html"):
        assert list(papers_on_page(page, {}, say("en"))) == []
    packet = {file(PaperWord.PACKET): 1000}
    for page in ("index.html", "practice.html"):
        assert list(papers_on_page(page, packet, say("en"))) == []


def test_every_link_of_the_site_leads_to_a_file_of_the_size_it_says(built_site: Path) -> None:
    seen = 0
    for page in built_site.rglob("*.html"):
        for link in read_page(page).iter("a"):
            href = link.get("href") or ""
            if href.startswith("papers/"):
                label = LABEL.fullmatch("".join(link.itertext()))
                assert label, page
                size = (page.parent / href).stat().st_size
                assert int(label[1].replace(",", "")) == round(size / 1000), page
                spanish = page.relative_to(built_site).parts[0] == "es"
                assert ("Español" if spanish else "English") in label[0], page
                seen += 1
    assert seen > 9 * 4  # nine lessons in their languages, four pages that link


def test_the_copy_that_is_carried_home_links_to_none(built_site: Path) -> None:
    for file_ in built_site.rglob("*-take-home.zip"):
        with ZipFile(file_) as packed:
            pages = [name for name in packed.namelist() if name.endswith(".html")]
            assert all(b'href="papers/' not in packed.read(name) for name in pages), file_
