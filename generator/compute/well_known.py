"""How well known a food is likely to be, from the names of the library alone; ours, no source.

A plain food has a short name, and what everybody knows comes back in the names of other foods:
apple in apple juice and apple pie, rice in rice milk. Nobody was asked.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Mapping

from generator.model.food import Food
from generator.model.wording import FALLBACK

_WORD = re.compile(r"[^\W\d_]+")
_OFTEN = (2, 4, 8)
"""In how many names a word comes back: below each of these a food is put back by one."""


def well_known(foods: Iterable[Food]) -> Mapping[str, int]:
    """By id of each food how far it is put back, from 1: words of its name, more for a rare word."""
    names = {food.id: _words(food) for food in foods}
    seen = Counter(word for words in names.values() for word in set(words))
    return {
        name: len(words) + sum(min(map(seen.__getitem__, words), default=0) < one for one in _OFTEN)
        for name, words in names.items()
    }


def _words(food: Food) -> list[str]:
    return _WORD.findall(food.entry.names[FALLBACK].casefold())
