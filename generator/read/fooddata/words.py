"""Words as somebody types them: small, without accents, one or many, and with a slip of the finger."""

from __future__ import annotations

import re
import string
import unicodedata
from functools import lru_cache

SHORTEST = 4
"""Letters of a word that may have a slip in it; a shorter one is soon another word."""
LONGEST = 24
"""Letters of a word whose slips are tried; no food is called by a longer one."""
_WORD = re.compile(r"[^\W_]+")


@lru_cache(maxsize=4_096)  # each name of the library is asked for again with each word
def words_of(text: str) -> tuple[str, ...]:
    """The words of what somebody typed, small and without accents; signs of any kind are no words."""
    plain = unicodedata.normalize("NFKD", text.lower())
    return tuple(_WORD.findall("".join(sign for sign in plain if not unicodedata.combining(sign))))


def stem(word: str) -> str:
    """Beans also finds bean."""
    return word[:-1] if len(word) > 3 and word.endswith("s") else word


def forms(word: str) -> tuple[str, ...]:
    """A word, and the same for one and for many: bean, beans; tomato, tomatoes."""
    other = [f"{word}s", f"{word}es", stem(word)]
    if len(word) > 4 and word.endswith("es"):
        other.append(word[:-2])
    return tuple(dict.fromkeys((word, *other)))


@lru_cache(maxsize=64)
def slips(word: str) -> frozenset[str]:
    """Every word that one slip of the finger makes of this one; nothing of a short word.

    A slip leaves a letter out, puts one in, takes another, or changes the places of two.
    """
    if not SHORTEST <= len(word) <= LONGEST:
        return frozenset()
    letters = string.ascii_lowercase
    cuts = [(word[:at], word[at:]) for at in range(len(word) + 1)]
    made = {head + tail[1:] for head, tail in cuts if tail}
    made |= {head + tail[1] + tail[0] + tail[2:] for head, tail in cuts if len(tail) > 1}
    made |= {head + letter + tail[1:] for head, tail in cuts if tail for letter in letters}
    made |= {head + letter + tail for head, tail in cuts for letter in letters}
    return frozenset(made - {word})
