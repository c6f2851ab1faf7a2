"""The site's words and numbers as one language writes them."""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import date
from decimal import Decimal
from fractions import Fraction
from typing import Literal

from babel import Locale, UnknownLocaleError
from babel.numbers import format_decimal, format_percent

from generator.compute.rounding import to_places
from generator.model.measure import Measure
from generator.model.words import Words
from generator.present.words.foreign import filled, joined, like

_GROUPS_FROM_FIVE_DIGITS = {"es", "es-ES"}
"""Languages that write 1420 but 14.200: CLDR's minimum grouping digits, which babel does not carry."""
_SUM = re.compile(r"\(*(?:\{\w+\}|\d+)(?:\)* [−+÷×=] \(*(?:\{\w+\}|\d+))+\)*")
"""A sum among the words of a text, its numbers still to be filled in."""
_ISOLATED, _ISOLATED_END = "\N{LEFT-TO-RIGHT ISOLATE}", "\N{POP DIRECTIONAL ISOLATE}"


class Say:
    """Words with their values filled in, and numbers written out, in one language."""

    def __init__(self, words: Words) -> None:
        self.language = words.language
        self._words = words
        self.locale = str(words.texts.get("locale", words.language))
        """Language and region as BCP 47 writes them: where numbers are written, ``es-US``."""
        self.direction: Literal["ltr", "rtl"] = (
            "rtl" if words.texts.get("direction") == "rtl" else "ltr"
        )
        """Whether the language is written from the left or from the right, as HTML says it."""
        self._locale = Locale.parse(self.locale, sep="-")
        self._numbers: dict[Decimal | int, str] = {}
        self._plain = {
            key: _SUM.sub(lambda found: self.from_left(found[0]), text)
            for key, text in words.texts.items()
            if isinstance(text, str)
        }

    def __call__(self, key: str, **values: object) -> str:
        """A text of the site.

        Args:
            key: its name in ``site_data/words/``.
            values: what its places hold; ``n`` also chooses the plural form.

        Raises:
            KeyError: the text or a value for one of its places is missing; a bug of ours.
        """
        text = self._plain.get(key)
        if text is None:
            text = self._form(self._words.forms(key), values["n"])
        return filled(text, values) if values else text

    def number(self, value: Decimal | int) -> str:
        """``1,420`` or ``2.5``, by CLDR."""
        if (written := self._numbers.get(value)) is not None:
            return written
        long = not -10_000 < value < 10_000
        grouped = long or self.locale not in _GROUPS_FROM_FIVE_DIGITS
        written = format_decimal(value, locale=self._locale, group_separator=grouped)
        return self._numbers.setdefault(value, written)

    def quantity(self, value: Decimal, measure: Measure) -> str:
        """A number with its unit, kept on one line by a no-break space."""
        return self.from_left(f"{self.number(value)}\N{NO-BREAK SPACE}{measure.unit}")

    def percent(self, value: Decimal) -> str:
        """``16%``, by CLDR."""
        return format_percent(value / 100, locale=self._locale)

    def day(self, day: date) -> str:
        """``March 14, 2026`` or ``14 de marzo de 2026``, by CLDR."""
        from babel.dates import format_date  # noqa: PLC0415  # few builds write a day: not loaded for the others

        return format_date(day, format="long", locale=self._locale)

    def from_left(self, text: str) -> str:
        """A sum, or a number with its unit: it runs from the left in every language.

        Where the words around it do not, it is held apart from them (Unicode Standard Annex #9, 2.6).
        """
        return f"{_ISOLATED}{text}{_ISOLATED_END}" if self.direction == "rtl" else text

    def listed(self, parts: tuple[str, ...]) -> str:
        """``a``, ``a and b``, ``a, b and c``."""
        if len(parts) < 2:
            return joined("", parts)
        return self("list_and", most=joined(", ", parts[:-1]), last=parts[-1])

    def inside(self, name: str) -> str:
        """A food's name inside a sentence: ``apple``, yet ``French toast``."""
        if name.split(maxsplit=1)[0] in self._plain["capital_names"].split():
            return name
        return like(name, name[:1].lower() + name[1:])

    def language_name(self, language: str) -> str:
        """What a language calls itself: our word for it, else CLDR's, else its tag.

        Args:
            language: tag of BCP 47, such as ``en`` or ``es``.
        """
        if own := self._plain.get(f"language_{language}"):
            return own
        try:
            name = Locale.parse(language, sep="-").display_name
        except (UnknownLocaleError, ValueError):
            return language
        return name[:1].upper() + name[1:] if name else language

    @property
    def texts(self) -> Mapping[str, str | Mapping[str, str]]:
        """Every text by its key, for the browser's scripts."""
        return {**self._words.texts, **self._plain}

    def plural(self, number: Decimal) -> str:
        """The CLDR plural category of a number: ``one``, ``other`` and what else the language has."""
        return self._locale.plural_form(number)

    def _form(self, forms: Mapping[str, str], number: object) -> str:
        return forms.get(self.plural(Decimal(str(number)))) or forms["other"]


def is_language(tag: str) -> bool:
    """Whether a word is the tag of a language that CLDR knows, such as ``es`` or ``pt-BR``."""
    try:
        return bool(Locale.parse(tag, sep="-"))
    except (UnknownLocaleError, ValueError):
        return False


def digits(value: Decimal) -> str:
    """A number for a machine: digits and a point, no needless zeros."""
    return f"{value.normalize():f}"


def as_decimal(exact: Fraction, places: int = 2) -> Decimal:
    """An exact value for reading, to so many decimal places; the exact one is what is computed with."""
    return to_places(exact, places).normalize()
