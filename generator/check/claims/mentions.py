"""Which foods and sides of a comparison a sentence names, and where."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache

from generator.compute.holding import Holding
from generator.compute.result import Comparison
from generator.language import Language, language_of
from generator.language.grammar import Grammar

Seat = tuple[int, int]
"""Row and side of a food, both counted from 0."""
Name = tuple[str, ...]
"""The stems of a food's name."""
Own = Mapping[str, tuple[frozenset[Seat], int | None]]
"""Whose a word is: where its foods stand, or which side it names."""


def held_at(comparison: Comparison, seat: Seat) -> Holding:
    """The food at a seat."""
    row, side = seat
    return comparison.rows[row].sides[side]


@dataclass(frozen=True, slots=True)
class Mention:
    """Something of the comparison, named in a sentence."""

    start: int
    """Where in the sentence."""
    seats: frozenset[Seat]
    """Where the food stands; nothing for a side."""
    side: int | None = None
    """The side named, counted from 0."""


def mentions(sentence: str, comparison: Comparison, language: Language) -> tuple[Mention, ...]:
    """What one sentence names; for many sentences make one ``Finder``."""
    return Finder(comparison, language).mentions(sentence)


class Finder:
    """Finds the foods and sides of one comparison in sentences."""

    def __init__(self, comparison: Comparison, language: Language) -> None:
        foods = tuple(
            (holding.name(language.tag).words, (row, side))
            for row, both in enumerate(comparison.rows)
            for side, holding in enumerate(both.sides)
        )
        self._names, self._own = _words_of(foods, comparison.stop.sides, language.tag)

    def mentions(self, sentence: str) -> tuple[Mention, ...]:
        """Foods by their whole names first, then sides and foods by a word that is theirs alone."""
        starts, stems = [], []
        for token in re.finditer(r"[^\W_]+", sentence):
            starts.append(token.start())
            stems.append(_stem(token[0]))
        found: list[Mention] = []
        for name, seats in self._names:
            for at in range(len(stems) - len(name) + 1):
                if stems[at] == name[0] and tuple(stems[at : at + len(name)]) == name:
                    found.append(Mention(starts[at], seats))
                    stems[at : at + len(name)] = [""] * len(name)  # no other name may have them too
        for start, stem in zip(starts, stems, strict=True):
            if stem in self._own:
                seats, side = self._own[stem]
                found.append(Mention(start, seats, side))
        return tuple(sorted(found, key=lambda mention: mention.start))


@lru_cache(maxsize=64)
def _words_of(
    foods: tuple[tuple[str, Seat], ...], sides: tuple[str, str], tag: str
) -> tuple[tuple[tuple[Name, frozenset[Seat]], ...], Own]:
    """Every food's name with where it stands, the longest first; and the words that are somebody's own.

    Kept, because each claim of a text asks for them.
    """
    names = _names(foods)
    longest_first = sorted(names.items(), key=lambda named: len(named[0]), reverse=True)
    return tuple(longest_first), _own_words(names, sides, language_of(tag).claims)


def _names(foods: tuple[tuple[str, Seat], ...]) -> dict[Name, frozenset[Seat]]:
    seats: dict[Name, set[Seat]] = defaultdict(set)
    for words, seat in foods:
        if name := tuple(stems(words)):
            seats[name].add(seat)
    return {name: frozenset(places) for name, places in seats.items()}


def _own_words(names: dict[Name, frozenset[Seat]], both: tuple[str, str], grammar: Grammar) -> Own:
    """Words that only one side, one food or the foods of one row have, with whose they are."""
    sides = [set(stems(side)) for side in both]
    own: dict[str, tuple[frozenset[Seat], int | None]] = {}
    for word, seats in _shared(names.items()):
        if (
            len({name for name in names if word in name}) == 1
            or len({row for row, _ in seats}) == 1
        ):
            own[word] = (seats, None)
    for side, theirs in enumerate(sides):
        own |= {word: (frozenset(), side) for word in theirs - sides[1 - side]}
    plain = {_stem(word) for word in grammar.plain}
    measures = grammar.measures.values()
    return {
        word: whose
        for word, whose in own.items()
        if len(word) > 2
        and word not in plain
        and not any(m.fullmatch(word) or m.fullmatch(f"{word}e") for m in measures)
    }


def _shared(
    names: Iterable[tuple[tuple[str, ...], frozenset[Seat]]],
) -> Iterator[tuple[str, frozenset[Seat]]]:
    seats: dict[str, frozenset[Seat]] = defaultdict(frozenset)
    for name, places in names:
        for word in name:
            seats[word] |= places
    yield from seats.items()


def stems(text: str) -> list[str]:
    """Its words, each without the ending of its plural."""
    return [_stem(word) for word in re.findall(r"[^\W_]+", text)]


def _stem(word: str) -> str:
    """A word without the ending of its plural: ``lentils`` as ``lentil``, ``panes`` as ``pan``.

    The ``e`` that many plurals have before the ``s`` goes from every longer word, so that ``tomato``
    and ``tomatoes``, ``apple`` and ``apples`` stay one.
    """
    small = word.lower()
    if len(small) > 3 and small.endswith("s") and not small.endswith("ss"):
        small = small[:-1]
    if len(small) > 3 and small.endswith("y"):
        small = small[:-1] + "i"
    return small[:-1] if len(small) > 3 and small.endswith("e") else small
