"""Who makes the site and where it will stand."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Annotated

from pydantic import AfterValidator, BeforeValidator, Field

from generator.model.base import Frozen
from generator.model.captions import CaptionLimits
from generator.model.papers import USUAL, PaperWord
from generator.model.publish_to import PublishTo
from generator.model.text_marks import Text

LANGUAGE_TAG = r"^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$"
Language = Annotated[str, Field(pattern=LANGUAGE_TAG)]
"""Language tag of BCP 47."""


class Standard(Frozen):
    """One code of a curriculum standard."""

    says: Text | Mapping[Language, Text]
    """One-line paraphrase, in the site's first language or by language: ``{en: …, es: …}``."""

    def in_languages(self, first: str) -> Mapping[str, str]:
        """The paraphrase by language; without one written, it is in the first of the site."""
        return {first: self.says} if isinstance(self.says, str) else self.says


PAGE = ".html"
"""How the address of a page ends."""
_ADDRESS = re.compile(r"\w[\w.-]*(/\w[\w.-]*)*(#[\w-]+)?", re.ASCII)


def _on_this_site(address: str) -> str:
    if _ADDRESS.fullmatch(address):
        return address
    what = "is no address on this site"
    raise ValueError(f"{what}: write a page such as recipes.html, or the folder of a lesson")


SiteAddress = Annotated[str, Field(max_length=200), AfterValidator(_on_this_site)]
"""A page from the site's root, ``recipes.html``, or the folder of a lesson."""
ProgrammeName = Annotated[Text, Field(max_length=120)]
"""One line above every page."""


def _or_nothing(written: object) -> object:
    """A key with nothing behind its colon says as little as a key that is not there."""
    return "" if written is None else written


class SiteFile(Frozen):
    """What ``site_data/site.yaml`` says."""

    programme: ProgrammeName
    """Name of the programme, shown above every lesson."""
    programme_in: Mapping[Language, ProgrammeName] = Field(default_factory=dict)
    """Its name on pages of other languages, where it has one there: ``{es: …}``."""
    address: Annotated[
        str,
        Field(pattern=r"^(https?://[^\s/?#\"'<>]+/([^\s?#\"'<>]*/)?)?$", max_length=200),
        BeforeValidator(_or_nothing),
    ] = ""
    """Where the site is published, ending in a slash; links on paper need it, and a QR code has no room for more."""
    license: Annotated[
        str, Field(pattern=r"^(https://\S+)?$", max_length=500), BeforeValidator(_or_nothing)
    ] = ""
    """Address of the licence under which anyone may use the lessons; empty where none is given."""
    languages: Annotated[tuple[Language, ...], Field(min_length=1, max_length=30)] = ("en",)
    """Language tags in the order offered; the first is the lessons' own."""
    captions: CaptionLimits = CaptionLimits()
    """What captions are held to, where the guidelines' own limits do not serve."""
    publish_recording_pack: bool = False
    """Whether the pages for filming are on the published site; in the preview they always are."""
    keep_lessons: bool = True
    """Whether families may keep lessons on their devices; where not, what is kept goes at the next visit."""
    papers: tuple[PaperWord, ...] = USUAL
    """Which papers each lesson has as PDF files; ``a4`` or ``letter`` alone makes one size, ``large`` adds large print."""
    formerly: Mapping[SiteAddress, SiteAddress | None] = Field(default_factory=dict)
    """Pages that had another address, and lessons that are gone: ``{recipes.html: teachers.html}``; nothing behind the colon where nothing takes the place."""
    publish: PublishTo | None = None
    """Where `publish` puts the site; a repository at a forge where nothing is said."""
    standards: Mapping[str, Standard] = Field(default_factory=dict)
    """Paraphrase by code."""

    def name_in(self, language: str) -> str:
        """The programme's name on the pages of a language."""
        return self.programme_in.get(language, self.programme)
