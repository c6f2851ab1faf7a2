"""Papers as files, where a page links to them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from generator.present.views.page import LinkView


@dataclass(frozen=True, slots=True)
class PaperLinksView:
    """One paper with its files."""

    title: str
    files: tuple[LinkView, ...]
    """At least one; each says what it is, for which paper, in which language, and how large."""


@dataclass(frozen=True, slots=True)
class PaperFilesView:
    """The files of some papers."""

    template: ClassVar[str] = "parts/paper-files.html"
    name: ClassVar[str] = "files"
    """What the page asks for."""
    papers: tuple[PaperLinksView, ...]
    """At least one, in the order a teacher uses them."""


@dataclass(frozen=True, slots=True)
class PacketView:
    """All papers in one file, among what a teacher does first."""

    template: ClassVar[str] = "parts/packet.html"
    name: ClassVar[str] = "packet"
    files: tuple[LinkView, ...]
    """Each says for which paper it is and how large, so briefly that all stand on a line."""
    language: str
    """What they are written in; told to those who listen."""
