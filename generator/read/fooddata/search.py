"""Foods of the library by words, the best first."""

from __future__ import annotations

from collections.abc import Mapping
from enum import IntEnum

from generator.model.food import Food
from generator.model.wording import FALLBACK
from generator.read.fooddata.words import forms, slips, stem, words_of


class Fit(IntEnum):
    """How a food fits the words, the best first."""

    EXACT = 0
    """It is called exactly that."""
    WORDS = 1
    """It has these words among others."""
    BEGINNINGS = 2
    """It has words that begin so."""
    RECORD = 3
    """Only the title of its record does."""
    SLIP = 4
    """It would, but for a slip of the finger."""


def find_in_library(
    foods: Mapping[str, Food], wanted: str, *, slip: bool = True
) -> tuple[tuple[Fit, Food], ...]:
    """Foods whose names in any language, or whose record, hold every word; the best first.

    Args:
        foods: of the library, by id.
        wanted: as somebody typed it.
        slip: whether to look for near words where no food has these.
    """
    words = words_of(wanted)
    if not words:
        return ()
    found = [(fit, food) for food in foods.values() if (fit := _fit(food, words)) is not None]
    if not found and slip:
        found = [(Fit.SLIP, food) for food in foods.values() if _slipped(food, words)]
    return tuple(
        sorted(found, key=lambda one: (one[0], len(one[1].name(FALLBACK).words), one[1].id))
    )


def title_fits(food: Food, wanted: str) -> bool:
    """Whether the title of its record holds every word, or one a slip away."""
    title = words_of(food.entry.record)
    return all(_near(title, word) for word in words_of(wanted))


def nearest_in_library(foods: Mapping[str, Food], wanted: str, most: int) -> tuple[Food, ...]:
    """Foods that fit best, and none that fits in a worse way: a pear is no pearled barley."""
    # A name that is exactly the words and one that has them among others are alike near.
    near = [(max(fit, Fit.WORDS), food) for fit, food in find_in_library(foods, wanted, slip=False)]
    best = min((fit for fit, _ in near), default=Fit.EXACT)
    return tuple(food for fit, food in near[:most] if fit == best)


def _fit(food: Food, words: tuple[str, ...]) -> Fit | None:
    names = _names(food)
    if words in names:
        return Fit.EXACT
    if any(set(map(stem, words)) <= set(map(stem, name)) for name in names):
        return Fit.WORDS
    if any(_holds(name, words) for name in names):
        return Fit.BEGINNINGS
    return Fit.RECORD if _holds(words_of(food.entry.record), words) else None


def _names(food: Food) -> list[tuple[str, ...]]:
    return [words_of(name) for name in (*food.entry.names.values(), food.id)]


def _holds(text: tuple[str, ...], words: tuple[str, ...]) -> bool:
    return all(any(have.startswith(stem(word)) for have in text) for word in words)


def _slipped(food: Food, words: tuple[str, ...]) -> bool:
    """Whether each word, or a word one slip away from it, is in one of the names."""
    texts = (*_names(food), words_of(food.entry.record))
    return any(all(_near(text, word) for word in words) for text in texts)


def _near(text: tuple[str, ...], word: str) -> bool:
    near = slips(word)
    return any(have.startswith(stem(word)) or not near.isdisjoint(forms(have)) for have in text)
