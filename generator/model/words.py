"""The site's own words in one language: buttons, headings, sentences around numbers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from generator.model.unit_words import Units


@dataclass(frozen=True, slots=True)
class Words:
    """Every text of the interface in one language.

    A text may hold places for values, ``{gap}``; a text with plural forms is kept by the
    CLDR category of its number ``n``: ``one``, ``other`` and what else the language has.
    """

    language: str
    """Language tag of BCP 47, such as ``en`` or ``es``."""
    texts: Mapping[str, str | Mapping[str, str]] = field(repr=False)
    """By key; a text with plural forms by form."""
    units: Units = field(default_factory=dict, repr=False)
    """What household units are called, one and several."""

    def plain(self, key: str) -> str:
        """A text without plural forms, its places unfilled.

        Raises:
            KeyError: there is no such text, or it has plural forms; a bug of ours, not of a lesson.
        """
        text = self.texts[key]
        if not isinstance(text, str):
            raise KeyError(f"{key} has plural forms")
        return text

    def forms(self, key: str) -> Mapping[str, str]:
        """The plural forms of a text.

        Raises:
            KeyError: there is no such text, or it has no plural forms.
        """
        text = self.texts[key]
        if isinstance(text, str):
            raise KeyError(f"{key} has no plural forms")
        return text
