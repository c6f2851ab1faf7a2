"""Foods of the library that a sentence gives a number to, and that are not in the lesson."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

from generator.compute.result import Comparison, LessonResult
from generator.language import Language, language_of
from generator.model.library import Library

_WORD = re.compile(r"[^\W\d_]+")
_FIRST_PART = re.compile(r"[^,(/]+?(?=\s(?:with|in|de|con|en)\s|[,(/]|$)")
"""What names the food itself, before how it is made: *Nachos* of *Nachos with cheese*."""
_SHORTEST = 4
"""Letters of a name that is looked for; *pie* and *tea* stand in too many other words."""


def stranger(result: LessonResult, said: str, language: Language, *, alone: bool) -> str | None:
    """The first word of a text that names a food of the library, and none of the lesson's.

    Args:
        result: the lesson.
        said: what is said to hold a number.
        language: of the text.
        alone: whether a stranger counts anywhere; else only beside a word of the lesson's, as
            *apple juice* in a lesson with grape juice.
    """
    known = language.claims.plain | _known(result, language.tag)
    foods = _foods(result.library, language.tag)
    words = _words(said)
    for at, word in enumerate(words):
        if word not in foods or word in known:
            continue
        neighbors = {*words[at + 1 : at + 2], *words[max(0, at - 2) : at]}
        if alone or neighbors & _known(result, language.tag):
            return word
    return None


def _foods(library: Library, tag: str) -> frozenset[str]:
    names = library.food_names
    return _naming(names.get(tag) or names.get(tag.partition("-")[0]) or (), tag)


@lru_cache(maxsize=8)
def _naming(names: tuple[str, ...], tag: str) -> frozenset[str]:
    """Words that name a food by themselves, in the singular and in the plural."""
    at = language_of(tag).said_of.food_word
    found: set[str] = set()
    for name in names:
        part = _FIRST_PART.match(name)
        found.update(_words(part[0] if part else "")[at:][:1])
    return _both(word for word in found if len(word) >= _SHORTEST)


@lru_cache(maxsize=8)
def _known(result: LessonResult, tag: str) -> frozenset[str]:
    """Words of the lesson's own foods and sides."""
    names = [held.name(tag).words for held in result.holdings]
    told = (stop.comparison_told for stop in result.worked.values())
    names += [side for stop in told if isinstance(stop, Comparison) for side in stop.stop.sides]
    return _both(word for name in names for word in _words(name))


def _both(words: Iterable[str]) -> frozenset[str]:
    return frozenset(
        form
        for word in words
        for form in (word, word.removesuffix("s"), f"{word.removesuffix('s')}s")
    )


def _words(text: str) -> list[str]:
    return [word.lower() for word in _WORD.findall(text)]
