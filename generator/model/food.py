"""A food record: what 100 g of it hold, and the portions people use."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction
from typing import TYPE_CHECKING, Annotated, Literal

from pydantic import Field, create_model, field_validator

from generator.model.amount import parse_amount, same_unit
from generator.model.base import Frozen
from generator.model.food_record import BY_DIFFERENCE, FIGURES
from generator.model.measure import Measure
from generator.model.unit_words import ONE, OTHER, UnitForms, Units, unit_forms
from generator.model.wording import FALLBACK, Wording, wording

FINEST = 8
"""Decimal places of a figure; records have five. ``1e-999999`` would be a number of a million digits."""
_PART = re.compile(r"(?P<top>[1-9]\d?)/(?P<bottom>[1-9]\d?) of (?P<amount>.+)")
Grams = Annotated[Decimal, Field(gt=0, le=5000, decimal_places=FINEST, allow_inf_nan=False)]
NoValue = Literal["no value"]
NotLookedAt = Literal["not looked at"]
NOT_LOOKED_AT: NotLookedAt = "not looked at"
"""Of allergens and choking: nobody has said either way, which is not the same as none."""
Value = (
    Annotated[Decimal, Field(ge=0, le=100_000, decimal_places=FINEST, allow_inf_nan=False)]
    | NoValue
)
"""What a record gives for 100 g, which hold 100,000 mg; ``no value`` is a blank in the record, not zero."""
Difference = (
    Annotated[Decimal, Field(gt=-100, le=100, decimal_places=FINEST, allow_inf_nan=False)] | NoValue
)
"""What is left of 100 g when all else was weighed: a little below zero where the others came out high."""


class Allergen(StrEnum):
    """The nine major food allergens of United States law (FALCPA 2004, FASTER Act 2021)."""

    MILK = "milk"
    EGGS = "eggs"
    FISH = "fish"
    SHELLFISH = "shellfish"
    TREE_NUTS = "tree nuts"
    PEANUTS = "peanuts"
    WHEAT = "wheat"
    SOYBEANS = "soybeans"
    SESAME = "sesame"


class Portion(Frozen):
    """A household portion and its weight."""

    names: Mapping[str, str]
    """Wording by language, beginning with its number; ``en`` is the one a lesson uses."""
    grams: Grams
    """Weight of the whole stated amount, in grams."""
    record: str
    """The record's own amount and unit, a part of it such as ``1/4 of 1 cup``, or grams alone."""
    units: Mapping[str, Mapping[str, str]] = {}
    """By language: its unit by CLDR plural category, where the words' table of units lacks it."""

    @property
    def of_record(self) -> tuple[Fraction, str]:
        """Which part of which amount of its record it is: a quarter of ``1 cup``, or all of it."""
        wanted = " ".join(self.record.split())
        if found := _PART.fullmatch(wanted):
            return Fraction(int(found["top"]), int(found["bottom"])), found["amount"]
        return Fraction(1), wanted

    def name(self, language: str) -> Wording[str]:
        """What the portion is called in a language: ``1 medium``."""
        return wording(self.names, language)

    def unit(self, language: str, units: Units) -> UnitForms | None:
        """What its unit is called; nothing where the language has no words for it.

        Args:
            language: tag of BCP 47.
            units: the language's table, for a portion without words of its own.
        """
        own = self.units.get(language) or self.units.get(language.partition("-")[0])
        name = self.name(language)
        return own or (None if name.foreign else unit_forms(name.words, units))

    @field_validator("names")
    @classmethod
    def _has_an_amount(cls, names: Mapping[str, str]) -> Mapping[str, str]:
        amount = parse_amount(names.get(FALLBACK, ""))
        if amount is None or amount.number <= 0:
            raise ValueError("need an English amount with a number: write {en: 1 cup}")
        return names

    @field_validator("units")
    @classmethod
    def _for_one_and_several(
        cls, units: Mapping[str, Mapping[str, str]]
    ) -> Mapping[str, Mapping[str, str]]:
        if any(not {ONE, OTHER} <= forms.keys() for forms in units.values()):
            raise ValueError("need a word for one and for several: write {es: {one: …, other: …}}")
        return units


class Figures(Frozen):
    """What 100 g hold; ``Per100g`` has a field for each of ``FIGURES``."""

    def value(self, figure: str) -> Decimal | None:
        """The figure in its own unit; nothing where there is no value."""
        value: Decimal | NoValue = getattr(self, figure)
        return value if isinstance(value, Decimal) else None

    def gives(self, figure: str) -> bool:
        """Whether the entry says anything of it, if only ``no value``.

        A figure that came to the library after the entry was written is no value until it is filled
        in: an older file is still right.
        """
        return figure in self.model_fields_set


_LATER = {measure.value for measure in Measure if not measure.entry.in_every_entry}

if TYPE_CHECKING:

    class Per100g(Figures):
        """What 100 g hold, as an entry of ``site_data/foods.yaml`` says it."""
else:
    # Made from the table, so that a measure that is added there can be written in an entry at once.
    Per100g = create_model(
        "Per100g",
        __base__=Figures,
        __module__=__name__,
        **{
            name: (
                Difference if name in BY_DIFFERENCE else Value,
                "no value" if name in _LATER else ...,
            )
            for name in FIGURES
        },
    )


class FoodEntry(Frozen):
    """One entry of ``site_data/foods.yaml``, as written there."""

    names: Mapping[str, str]
    """Plain name by language."""
    group: str
    """Which shelf of the library it stands on."""
    fdc: Annotated[int, Field(gt=0)]
    """FoodData Central id."""
    record: str
    """The record's own description."""
    per_100g: Per100g
    """Values of its record."""
    portions: Annotated[tuple[Portion, ...], Field(min_length=1)]
    """Amounts that a lesson may name."""
    release: str | None = None
    """Release of the record, where it is not the one the file opens with."""
    drink: bool = False
    """Whether it is drunk."""
    allergens: tuple[Allergen, ...] | NotLookedAt = NOT_LOOKED_AT
    """Those that it plainly contains; an empty list where somebody looked and none is plain."""
    choking: bool | NotLookedAt = False
    """Whether it can choke a child under four; some foods, such as nuts, however they are cut."""
    raw: bool = False
    """Whether it is raw and eaten only cooked: no lesson may show it."""
    as_published: str = ""
    """Why figures that look wrong are right as its record has them; then nobody asks about them."""

    @property
    def contains(self) -> tuple[Allergen, ...]:
        """The allergens it is known to contain; none where nobody has looked."""
        return () if self.allergens == NOT_LOOKED_AT else self.allergens

    @property
    def can_choke(self) -> bool:
        """Whether it is known to choke; not where nobody has looked."""
        return self.choking is True

    @property
    def not_looked_at(self) -> tuple[str, ...]:
        """The keys of which nobody has said either way."""
        keys = {"allergens": self.allergens, "choking": self.choking}
        return tuple(key for key, said in keys.items() if said == NOT_LOOKED_AT)

    @field_validator("names")
    @classmethod
    def _has_a_name(cls, names: Mapping[str, str]) -> Mapping[str, str]:
        if not names.get(FALLBACK, "").strip():
            raise ValueError("need an English name: write {en: Apple}")
        return names


@dataclass(frozen=True, slots=True)
class Serving:
    """An amount of a food, weighed."""

    grams: Fraction
    """Weight of the amount, exact."""
    portion: Portion | None
    """The portion it was weighed by; nothing where grams were given."""
    times: Fraction
    """How many of that portion."""


@dataclass(frozen=True, slots=True)
class Food:
    """A food a lesson can name by its id."""

    id: str
    """As a lesson names it."""
    entry: FoodEntry
    """As its file has it."""
    release: str
    """Release the figures come from, such as ``USDA FoodData Central, SR Legacy, 2018-04``."""

    def name(self, language: str) -> Wording[str]:
        """What the food is called in a language."""
        return wording(self.entry.names, language)

    def value(self, measure: Measure) -> Decimal | None:
        """What 100 g hold, in the measure's unit; nothing where the record has no value."""
        return self.entry.per_100g.value(measure.value)

    def serving(self, amount: str) -> Serving | None:
        """Weigh an amount such as ``2 slices`` or ``150 g``; nothing where no portion fits it."""
        wanted = parse_amount(amount)
        if wanted is None or wanted.number <= 0:
            return None
        if wanted.grams is not None:
            return Serving(wanted.grams, None, Fraction(1))
        fitting = [
            (wanted.number / held.number, portion)
            for portion in self.entry.portions
            if (held := parse_amount(portion.names[FALLBACK])) and same_unit(held, wanted)
        ]
        if not fitting:
            return None
        # A portion the record weighed as it is comes before a multiple of another one.
        times, portion = next((one for one in fitting if one[0] == 1), fitting[0])
        return Serving(Fraction(portion.grams) * times, portion, times)
