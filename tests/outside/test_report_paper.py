"""The report as a PDF breaks no point of PDF/UA-1, and its words can be read back from it."""

from __future__ import annotations

from pathlib import Path

from pypdf import PdfReader

from tests.cli.test_reporting import report, rows
from tests.outside.pdf_ua import broken_points
from tests.project import GOOD, put
from tests.site_project import copy_project


def test_the_report_on_paper(tmp_path: Path) -> None:
    site = copy_project(tmp_path / "project", lessons=False)
    put(site, GOOD, "meal")
    report(site, tmp_path, {"a.csv": rows()})
    paper = tmp_path / "out/report.pdf"
    assert broken_points(paper.read_bytes()) == []
    said = " ".join(" ".join(page.extract_text() for page in PdfReader(paper).pages).split())
    assert "40 of 60" in said
    assert "exact p 0.029, mid-p 0.02" in said
