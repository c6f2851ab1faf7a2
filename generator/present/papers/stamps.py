"""The stamps of papers that no page prints: made of what typst is given, for there is no page to make them of."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.page import Build
from generator.present.papers.data import Data, as_data
from generator.present.papers.family import family_view
from generator.present.papers.keys import keys_in
from generator.present.printed import printed
from generator.present.words.stamp import stamp_of

FAMILY = "family"
"""Name of the sheet, and of its template."""


def paper_stamps(told: PageInLesson, theme: Path) -> Mapping[str, str]:
    """By sheet, its stamp; nothing in a preview, which makes no papers.

    Args:
        told: what its views are made from.
        theme: folder of the templates.
    """
    if Build.PUBLISHED not in told.surround.builds:
        return {}
    texts = told.surround.say.texts
    words = [str(texts[key]) for key in keys_in(theme / "papers" / f"{FAMILY}.typ")]
    shown = _shown(as_data(family_view(told)))
    return {FAMILY: stamp_of(printed("\n".join([*words, told.surround.still_right, *shown])))}


def _shown(data: Data) -> Iterator[str]:
    """Every text and drawing in what a template is given; what a drawing shows in words is printed nowhere."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, Mapping):
        drawing = data.get("svg")
        for one in [drawing] if drawing else data.values():
            yield from _shown(one)
    elif isinstance(data, Sequence):
        for one in data:
            yield from _shown(one)
