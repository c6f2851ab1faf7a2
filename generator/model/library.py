"""Everything a lesson may call by name."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from generator.model.food import Food
from generator.model.move import Move
from generator.model.places import Path
from generator.model.site import SiteFile
from generator.model.words import Words
from generator.problems import Place, Problem


@dataclass(frozen=True, slots=True)
class Library:
    """What stands in ``site_data/``."""

    foods: Mapping[str, Food] = field(repr=False)
    """Foods by id."""
    moves: Mapping[str, Move] = field(repr=False)
    """Moves by id."""
    words: Mapping[str, Words] = field(repr=False)
    """Interface texts by language."""
    site: SiteFile
    """What the site says of itself."""
    places: Mapping[Path, Place] = field(default_factory=dict, repr=False)
    """Where words of the library stand: ``("foods", "apple-raw", "names")``, ``("moves", "march",
    "texts")``, ``("words", "es", "grams")``, and ``("languages", 1)`` and ``("address",)``
    of the site; ``("replaced", …)`` what stands in the place of the program's own; and
    ``("foods", "apple-raw", "per_100g")`` its figures."""
    food_names: Mapping[str, tuple[str, ...]] = field(default_factory=dict, repr=False)
    """What all foods together are called, by language: for whoever looks through all names, and so
    depends on names alone and on no figure."""
    questions: tuple[Problem, ...] = ()
    """What is questionable about its foods, found when they were read."""

    @property
    def eatable(self) -> tuple[str, ...]:
        """Ids of the foods a lesson may name: all but those that are raw and eaten only cooked."""
        return tuple(name for name, food in self.foods.items() if not food.entry.raw)
