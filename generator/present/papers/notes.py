"""The teaching notes on paper: what their page prints, with the way back to the lesson."""

from __future__ import annotations

from dataclasses import dataclass, replace

from markupsafe import Markup

from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.notes import notes_view
from generator.present.pictures.qr import qr_code
from generator.present.views.notes import NotesView


@dataclass(frozen=True, slots=True)
class NotesPaperView:
    """The notes, and what every paper has."""

    title: str
    notes: NotesView
    """Without what only the screen shows: where numbers come from is long, and other lessons are a link away."""
    qr: Markup
    """SVG of the lesson's address; empty while the site has none."""


def notes_paper(told: PageInLesson) -> NotesPaperView:
    """The notes as a sheet shows them."""
    whole = notes_view(told)
    notes = replace(
        whole,
        count_why=whole.count_why[:1],
        count_truth=(),
        count_from="",
        neighbours=(),
        sources=(),
        brings=(),
        day_needs=(),
        downloads=(),
        contents=(),
    )
    return NotesPaperView(notes.title, notes, qr_code(notes.address))
