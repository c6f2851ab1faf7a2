"""How many syllables an English word has, by ear.

English spelling hides its syllables; counting groups of vowels and taking away what is silent
is right for most everyday words (common practice, no source) and wrong for some, which evens
out over a text.
"""

from __future__ import annotations

import re

_GROUP = re.compile(r"[aeiouy]+")
_SILENT = re.compile(r"(?:[^laeiouy]e|[^aeiouytd]ed|[^sxzaeiouycgh]es)$")
_SPLIT = re.compile(r"i(?:a|o(?!u)|um)(?<![tcs]i[ao])|[^q]ua(?!r|i)|eo(?!us)|[aeiouy]ing|uous")
_EXCEPTIONS = {
    "area": 3, "areas": 3, "create": 2, "created": 3, "creates": 2, "idea": 3, "ideas": 3,
    "kilocalories": 6, "museum": 3, "people": 2, "peoples": 2, "poem": 2, "poems": 2, "quiet": 2,
    "quietly": 3, "rhythm": 2, "science": 2, "calories": 3, "calorie": 3, "recipe": 3,
}  # fmt: skip
"""Everyday words of lessons that the rules below count wrong."""


def syllables(word: str) -> int:
    """At least one; the word is letters, with or without an apostrophe."""
    plain = re.sub(r"[^a-z]", "", word.lower())
    if plain in _EXCEPTIONS:
        return _EXCEPTIONS[plain]
    count = len(_GROUP.findall(plain)) + len(_SPLIT.findall(plain))
    count -= bool(_SILENT.search(plain))
    count += plain.endswith("sm")
    return max(count, 1)
