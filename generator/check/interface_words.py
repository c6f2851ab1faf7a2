"""Texts of the interface that are still those of the file they were copied from."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from generator.language import language_of
from generator.model.library import Library
from generator.model.wording import FALLBACK
from generator.model.words import Words
from generator.problems import Place, Problem, Weight

_PLACE = re.compile(r"\{\w*\}")
_WORD = re.compile(r"[^\W\d_]{2,}")
_TELLING = 2
"""Words a text must have to tell its language: ``Plan`` and ``{grams} g`` are the same in many."""


def interface_translated(library: Library) -> Iterator[Problem]:
    """A question for each language whose file still holds English texts, once."""
    english = library.words[FALLBACK]
    for language, words in library.words.items():
        if language_of(language).tag == FALLBACK:
            continue
        telling = [key for key, text in english.texts.items() if key != "locale" and _tells(text)]
        same = [key for key in telling if words.texts.get(key) == english.texts[key]]
        if same:
            yield _problem(library, words, same, len(telling))


def _problem(library: Library, words: Words, same: list[str], of: int) -> Problem:
    file = f"words/{words.language}.yaml"
    place = library.places.get(("words", words.language, same[0]), Place(f"site_data/{file}"))
    named = ", ".join(f"`{key}`" for key in same[:3]) + (" …" if len(same) > 3 else "")
    what = f"{file} is still English in {len(same)} of {of} texts"
    return Problem(place, what, f"translate {named}", Weight.QUESTION)


def _tells(text: str | Mapping[str, str]) -> bool:
    """Whether a text has enough words outside its places to be of one language."""
    plain = text if isinstance(text, str) else text["other"]
    return len(_WORD.findall(_PLACE.sub(" ", plain))) >= _TELLING
