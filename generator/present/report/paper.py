"""The report as a PDF file with tags, by typst; the same report gives the same bytes."""

from __future__ import annotations

import json
from dataclasses import asdict
from pathlib import Path

import typst

from generator.present.papers.paper import Size
from generator.present.pictures.colours import LIGHT
from generator.present.report.view import ReportView
from generator.present.words.say import Say

_SAID = (
    "report_hidden",
    "report_lesson",
    "report_codes_head",
    "report_minutes_head",
    "report_reach",
    "report_stops",
    "report_stop",
    "report_done",
    "report_percent_head",
    "report_answers",
    "report_answer",
    "report_first",
    "report_last",
    "report_learned",
    "report_answered",
    "report_right",
    "report_change",
    "report_how_many",
    "report_cautions",
    "report_by_id",
)
"""Headings of the page, the same on paper."""


def report_pdf(view: ReportView, say: Say, theme: Path, paper: Size) -> bytes:
    """The file.

    Args:
        view: what it shows.
        say: the words of its language.
        theme: folder of the theme.
        paper: what it is to be printed on.
    """
    return bytes(
        typst.compile(
            theme / "report" / "report.typ",
            root=theme,
            format="pdf",
            sys_inputs={
                "paper": paper.in_typst,
                "view": json.dumps(asdict(view), ensure_ascii=False),
                "words": json.dumps({key: say(key) for key in _SAID}, ensure_ascii=False),
                "colours": json.dumps(asdict(LIGHT)),
            },
            font_paths=[theme / "vendor" / "noto-sans"],
            ignore_system_fonts=True,  # they are other ones on every machine
            pdf_standards=["ua-1"],
            timestamp=0,
        )
    )
