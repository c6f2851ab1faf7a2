"""The colours of the look for what no style of a page reaches: charts, figures by themselves, slides.

They are those of ``theme/css/tokens.css``, by the same names, and a test holds them to it.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Colours:
    """One set of colours, each as ``#`` and hexadecimal digits."""

    paper: str
    card: str
    ink: str
    quiet: str
    plum: str
    plum_wash: str
    thread: str
    slate: str
    slate_wash: str
    apricot: str
    apricot_wash: str

    @property
    def sides(self) -> tuple[str, str]:
        """Of the two sides of a comparison."""
        return self.slate, self.apricot


LIGHT = Colours(
    paper="#fbf6ee",
    card="#fff",
    ink="#2a1a2c",
    quiet="#5e4b60",
    plum="#6a1f4f",
    plum_wash="#f3e3ec",
    thread="#8a6f86",
    slate="#1f5673",
    slate_wash="#dceaf1",
    apricot="#97480f",
    apricot_wash="#fbe6d3",
)
DARK = Colours(
    paper="#1c141e",
    card="#281d2b",
    ink="#f5ecf2",
    quiet="#c9b6c6",
    plum="#f0a8d0",
    plum_wash="#43243a",
    thread="#a48aa0",
    slate="#8cc6e6",
    slate_wash="#1f3a4a",
    apricot="#f3b37c",
    apricot_wash="#4a2e17",
)
