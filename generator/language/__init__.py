"""What differs by language: number words, claims, kind words, reading level."""

from __future__ import annotations

from collections.abc import Mapping

from generator.language.en import LANGUAGE as ENGLISH
from generator.language.es import LANGUAGE as SPANISH
from generator.language.language import Language
from generator.language.plain import plain

KNOWN: Mapping[str, Language] = {one.tag: one for one in (ENGLISH, SPANISH)}
"""Languages that have a folder here, by their tags."""


def language_of(tag: str) -> Language:
    """The language of a tag of BCP 47, whatever its region; the plain one where it has no folder."""
    primary = tag.partition("-")[0]
    return KNOWN.get(primary) or plain(primary)


__all__ = ["KNOWN", "Language", "language_of"]
