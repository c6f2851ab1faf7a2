"""Every paper of the demo as a file, by readers that had no part in it: PDF/UA-1, codes, words, sheets."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

from pypdf import PdfReader

from tests.outside.addresses import ADDRESS, leads_somewhere
from tests.outside.pdf_ua import broken_points
from tests.outside.pictures import codes_on_sheets, words_on_sheets

SIZES = {"a4": (210, 297), "letter": (216, 279)}
"""Millimetres across and down (ISO 216; ANSI/ASME Y14.1, from memory, status M)."""


def papers(folder: Path) -> list[Path]:
    """Each paper once in either print and once in either size; no packet, which is made of them."""
    found = [*folder.rglob("*-a4.pdf"), *folder.rglob("*-large-letter.pdf")]
    found = [one for one in sorted(found) if not one.name.startswith("packet")]
    kept = [one for one in found if not one.name.endswith("-large-a4.pdf")]
    assert len(kept) > 30
    return kept


def of_lesson(folder: Path, paper: Path) -> str:
    return paper.relative_to(folder).parent.parent.as_posix()


def test_none_breaks_a_point_of_pdf_ua(made_papers: Path) -> None:
    packets = sorted(made_papers.rglob("packet-a4.pdf"))[::4]  # each is made of the others
    assert packets
    broken = {
        paper.relative_to(made_papers).as_posix(): told
        for paper in (*papers(made_papers), *packets)
        if (told := broken_points(paper.read_bytes()))
    }
    assert broken == {}


def test_each_code_leads_to_the_page_of_its_lesson(made_papers: Path, built_site: Path) -> None:
    for paper in papers(made_papers):
        page = f"{ADDRESS}{of_lesson(made_papers, paper)}/index.html"
        codes = [code for sheet in codes_on_sheets(paper.read_bytes()) for code in sheet]
        assert all(code.partition("#")[0] == page for code in codes), paper
        assert all(leads_somewhere(built_site, code) for code in set(codes)), paper
        if page in words_on_sheets(paper.read_bytes()) or "worksheet" in paper.name:
            assert page in codes, f"{paper} says the address, and no code leads there"


def test_sheets_are_of_the_size_that_the_name_says(made_papers: Path) -> None:
    for paper in sorted(made_papers.rglob("*.pdf")):
        size = SIZES["letter" if paper.stem.endswith("letter") else "a4"]
        for sheet in PdfReader(BytesIO(paper.read_bytes())).pages:
            across, down = (round(float(one) * 25.4 / 72) for one in sheet.mediabox.upper_right)
            assert (across, down) == size, paper


def test_a_packet_holds_the_sheets_of_its_papers(made_papers: Path) -> None:
    for packet in sorted(made_papers.rglob("packet*.pdf")):
        kind = packet.stem.removeprefix("packet")
        each = [
            one for one in packet.parent.glob("*.pdf")
            if one != packet and one.stem.endswith(kind) and ("large" in one.stem) == ("large" in kind)
        ]  # fmt: skip
        sheets = [len(PdfReader(BytesIO(one.read_bytes())).pages) for one in (packet, *each)]
        assert sheets[0] == sum(sheets[1:]), packet


def test_the_outline_of_a_packet_tells_its_papers_apart(made_papers: Path) -> None:
    packet = PdfReader(made_papers / "es/river-walk/papers/packet-a4.pdf")
    names = [str(one.title) for one in packet.outline if not isinstance(one, list)]
    asked = ("Notas", "Hoja de trabajo", "Hoja de respuestas", "Tarjetas", "Hoja para la familia")
    assert len(names) == len(asked)
    assert all(name.startswith(begins) for name, begins in zip(names, asked, strict=True)), names
