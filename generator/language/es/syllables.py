"""How many syllables a Spanish word has, by rule.

Spanish spelling shows them: every strong vowel makes one, and two weak ones, or a weak one
without accent beside a strong one, share it (RAE, Ortografía 2010, from memory).
"""

from __future__ import annotations

import re
import unicodedata


def syllables(word: str) -> int:
    """At least one; accents count, for they part vowels that would run together."""
    plain = unicodedata.normalize("NFC", word.lower())
    plain = re.sub(r"(?<=[qg])u(?=[eéií])", "", plain)  # the u of que and gui is silent
    plain = re.sub(r"[^a-záéíóúüñ]", "", plain)
    plain = re.sub(r"[aeiou]?h(?=[aeiou])", lambda found: found[0][:-1], plain)
    return max(len(_nuclei(plain)), 1)


def _nuclei(word: str) -> list[str]:
    """The vowels of each syllable, read from the left."""
    nuclei: list[str] = []
    previous = ""
    word = word[:-1].replace("y", "-") + word[-1:]  # before a vowel a y is a consonant
    for letter in word:
        if letter not in "aeiouáéíóúüy":
            previous = ""
            continue
        joined = previous and not (_strong(previous[-1]) and _strong(letter))
        if joined and len(previous) < 3:
            previous += letter
            nuclei[-1] = previous
        else:
            previous = letter
            nuclei.append(letter)
    return nuclei


def _strong(vowel: str) -> bool:
    """Whether a vowel keeps a syllable of its own beside another of its kind."""
    return vowel in "aeoáéóíú"
