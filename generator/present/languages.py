"""Where the pages of each language stand, and which of them are written by hand."""

from __future__ import annotations

from collections.abc import Mapping

from generator.model.site import SiteFile

Pages = Mapping[str, tuple[tuple[str, str], ...]]
"""By language: address and title of the hand-written pages."""


def folder_of(language: str, site: SiteFile) -> str:
    """Where a language's pages stand: ``es/``, or nothing for the first language."""
    return "" if language == site.languages[0] else f"{language}/"
