"""What an entry says of care when it is added: what the educator said, what the record's words say, what nobody has looked at."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from generator.compute.record_words import allergens_said, choking_shape, eaten_cooked
from generator.model.food import NOT_LOOKED_AT, Allergen
from generator.problems import LessonError, Place, Problem
from generator.read.explain import did_you_mean
from generator.read.library import FOODS

_NONE = "none"


@dataclass(frozen=True, slots=True)
class FoodCare:
    """What the educator says of a food she adds; nothing where she has not looked."""

    allergens: tuple[Allergen, ...] | None = None
    """Those that it plainly contains."""
    choking: bool | None = None
    """Whether a child under four can choke on it."""


NOBODY_LOOKED = FoodCare()
"""Where nothing was said."""


def said_allergens(words: str) -> tuple[Allergen, ...] | None:
    """Allergens as they are typed, ``milk, wheat`` or ``none``; nothing where nothing is typed.

    Raises:
        LessonError: with every word that is no allergen.
    """
    typed = [word.strip().lower() for word in words.split(",") if word.strip()]
    if not typed or typed == [_NONE]:
        return () if typed else None
    known = [allergen.value for allergen in Allergen]
    wrong = [word for word in typed if word not in known]
    if wrong:
        raise LessonError(
            Problem(Place(FOODS), f"`{word}` is none of the nine allergens", _meant(word, known))
            for word in wrong
        )
    return tuple(allergen for allergen in Allergen if allergen.value in typed)


def care_lines(title: str, shelf: str, care: FoodCare) -> Iterator[str]:
    """The lines of an entry about care, without its indent.

    Args:
        title: the record's own.
        shelf: the record's own, or empty.
        care: what the educator says; for the rest stands what the record's words speak of.
    """
    if care.allergens is None:
        yield f"allergens: {NOT_LOOKED_AT} # {_spoken_of(title)}write a list of them, or [] where none is plain"
    else:
        yield f"allergens: {_listed(care.allergens)}"
    if care.choking is None:
        shape = choking_shape(title)
        like = f"its record speaks of {shape}; " if shape else ""
        yield f"choking: {NOT_LOOKED_AT} # {like}write true or false"
    elif care.choking:
        yield "choking: true"
    if eaten_cooked(title, shelf):
        yield "raw: true # nobody eats it so: no lesson can name it"


def care_told(id_: str, title: str, shelf: str, care: FoodCare) -> Iterator[str]:
    """What is left to do about care, a sentence each, for whoever added the food."""
    if care.allergens is None:
        speaks = _listed(allergens_said(title))
        record = f" (its record speaks of {speaks})" if speaks != "[]" else ""
        yield f"Nobody has looked at its allergens yet{record}: `check` asks until they stand in its entry."
    elif left := [one for one in allergens_said(title) if one not in care.allergens]:
        yield f"Its record speaks of {_listed(left)}, and its entry does not: look again."
    if care.choking is None:
        yield "Nobody has looked yet whether a child under 4 can choke on it."
    elif not care.choking and (shape := choking_shape(title)):
        yield f"Its record speaks of {shape}, which a child under 4 can choke on: look again."
    if eaten_cooked(title, shelf):
        yield f"It is raw and eaten only cooked, so no lesson can name `{id_}`: look for a cooked record."


def _spoken_of(title: str) -> str:
    said = allergens_said(title)
    return f"its record speaks of {_listed(said)}; " if said else ""


def _listed(allergens: Sequence[Allergen]) -> str:
    return f"[{', '.join(allergens)}]"


def _meant(word: str, known: list[str]) -> str:
    return f"{did_you_mean(word, known)} Write `none` where none is plain"
