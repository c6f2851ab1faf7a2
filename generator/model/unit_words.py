"""What a household unit is called when there is one of it, several, or a part of one."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

UnitForms = Mapping[str, str]
"""A unit by the CLDR plural category of its number: ``one``, ``other`` and what else the language
has; ``PART`` where a part of one is called otherwise than one."""
Units = Mapping[str, UnitForms]
"""Units of one language, by what one of them is called: ``cup``, ``large pancake``."""
ONE, OTHER, PART = "one", "other", "part"
_NUMBER = re.compile(r"[\d./]+(?:\s+\d+/\d+)?\s+")


def unit_forms(name: str, units: Units) -> UnitForms | None:
    """The forms of the unit in a portion's name; nothing where the table does not know it.

    Args:
        name: number and unit, one or several: ``1 cup chopped``, ``50 berries``. The longest unit
            that the words begin with is taken; what follows it stays as it is.
        units: the table of the name's language.
    """
    words = _NUMBER.sub("", name, count=1)
    known = {form: forms for forms in units.values() for form in forms.values()}
    for end in _ends(words):
        if forms := known.get(words[:end]):
            return {category: form + words[end:] for category, form in forms.items()}
    return None


def read_units(written: Mapping[str, str | UnitForms]) -> Units:
    """A table as a file has it: ``cup: cups``, or ``cup: {other: cups, part: cup}``."""
    return {
        one: {ONE: one, **({OTHER: more} if isinstance(more, str) else more)}
        for one, more in written.items()
    }


def _ends(words: str) -> Iterator[int]:
    """Where a unit may end, the longest first."""
    yield len(words)
    for found in reversed(list(re.finditer(r"[ ,]", words))):
        yield found.start()
