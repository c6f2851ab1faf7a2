"""The table of measures: what a lesson can compare, and all there is to say of each.

What else the program knows of a measure follows from its entry here: how a label shows it, which
share of a day it is, where a food record holds it, and what no food can exceed. Only its words
stand elsewhere, in ``site_data/words/`` and with the languages; a test names every word that is
missing. DEVELOPERS.md says how one is added.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction
from typing import Self

from generator.model.label_rule import LabelRule, Step


class Unit(StrEnum):
    """What a measure is counted in, as it is written beside a number."""

    KCAL = "kcal"
    GRAM = "g"
    MILLIGRAM = "mg"


@dataclass(frozen=True, slots=True)
class Most:
    """The most that a food can hold."""

    in_one_gram: Fraction
    """In the measure's unit, for each gram of the food."""
    why: str = "it would weigh more than the food itself"
    """What makes it the most, for whoever gave a larger value."""


@dataclass(frozen=True, slots=True)
class MeasureEntry:
    """One entry of the table."""

    name: str
    """As in a lesson file and in ``site_data/foods.yaml``."""
    unit: Unit
    """Of records, labels and pages alike."""
    nutrients: tuple[int, ...]
    """Nutrient ids of FoodData Central, the preferred one first."""
    label: LabelRule
    """How an amount is rounded for showing."""
    most: Most
    """What no food exceeds."""
    daily_value: Decimal | None = None
    """For adults and children of 4 years and more, in the measure's unit; none where the label has none."""
    reference_day: Decimal | None = None
    """What the label's reference diet holds in a day, where that is not said by a Daily Value."""
    brings: bool = False
    """Whether it is told of a portion that holds much of it: the measures one looks for more of."""
    little_or_much: bool = False
    """Whether adults are told of a portion that it holds little or much of it."""
    percent: LabelRule | None = None
    """How a label shows its share of the Daily Value; in percent."""
    grams_per_teaspoon: int | None = None
    """Shown as teaspoons as well, of so many grams."""
    in_every_entry: bool = False
    """Whether an entry of ``site_data/foods.yaml`` must give it, if only as ``no value``. A measure
    that comes later must not make the files of others wrong: there it is no value until filled in."""

    @property
    def day(self) -> Decimal | None:
        """A day's worth of it on a label, in the measure's unit."""
        return self.reference_day if self.daily_value is None else self.daily_value


_PURE = Most(Fraction(1))
_PURE_IN_MG = Most(
    Fraction(1000), "it would weigh more than the food itself; it is given in mg here"
)


_WHOLE_PERCENT = LabelRule("(d)(7)(ii)", (Step(Decimal(1)),))
_VITAMIN_PERCENT = LabelRule(
    "(c)(8)(iii)",
    (
        Step(Decimal(2), until=Fraction(10)),
        Step(Decimal(5), until=Fraction(50)),
        Step(Decimal(10)),
    ),
)
"""Of vitamins and minerals other than sodium. A tie goes up, as in the rule's own example: 235 mg of
potassium, 5.0 percent, are shown as 6 percent."""


def _gram(paragraph: str) -> LabelRule:
    """Whole grams; what is below half a gram may be shown as 0, and ours always is."""
    return LabelRule(paragraph, (Step(Decimal(1)),), zero_below=Fraction(1, 2))


def _vitamin(step: str) -> LabelRule:
    """For a vitamin or mineral other than sodium: by its Daily Value to the nearest 10, 1 or 0.1.

    Source: FDA's guidance of December 2019 on rounding (250 mg and more: 10 mg; 25 to under 250:
    1 mg; under 25: 0.1 mg), for the levels of significance that 21 CFR 101.9(c)(8)(iv) asks for.
    """
    return LabelRule("(c)(8)(iv), FDA's guidance of 2019", (Step(Decimal(step)),))


class Measure(StrEnum):
    """A measure of a food; each member is its entry of the table.

    Daily Values: 21 CFR 101.9(c)(8)(iv) and (c)(9). Nutrient ids: FoodData Central's ``nutrient.csv``.
    """

    entry: MeasureEntry
    """All there is to say of it."""

    def __new__(cls, entry: MeasureEntry) -> Self:
        """A member that is its own name and carries its entry."""
        member = str.__new__(cls, entry.name)
        member._value_ = entry.name
        member.entry = entry
        return member

    @property
    def unit(self) -> Unit:
        """The unit its values are given and shown in: kcal, mg or g."""
        return self.entry.unit

    ENERGY = MeasureEntry(
        "energy",
        Unit.KCAL,
        # Foundation states energy by Atwater's general factors (2047) and at times by those of the
        # food (2048), plain energy seldom. The general ones are those of a label: 101.9(c)(1)(i)(B).
        nutrients=(1008, 2047, 2048),
        label=LabelRule(
            "(c)(1)",
            (Step(Decimal(5), until=Fraction(50)), Step(Decimal(10))),
            zero_below=Fraction(5),  # the rule says "may"; ours always does
        ),
        reference_day=Decimal(2000),  # from memory: 21 CFR 101.9(c)(9)
        # Pure lard, the densest record of SR Legacy (FDC 171401). The general Atwater factor for
        # fat gives 900 (101.9(c)(1)(i)); animal fats have a factor of their own, 9.02 kcal/g.
        most=Most(
            Fraction(902, 100),
            "pure fat holds about 900 kcal in 100 g; 1 kcal is 4.184 kJ, in case the label gives kJ",
        ),
        in_every_entry=True,
    )
    SODIUM = MeasureEntry(
        "sodium",
        Unit.MILLIGRAM,
        nutrients=(1093,),
        label=LabelRule(
            "(c)(4)",
            (Step(Decimal(5), until=Fraction(140)), Step(Decimal(10))),
            zero_below=Fraction(5),
        ),
        daily_value=Decimal(2300),
        # Sodium's share of table salt by weight, from the atomic weights 22.99 and 35.45.
        little_or_much=True,
        percent=_WHOLE_PERCENT,
        most=Most(
            1000 * Fraction(2299, 5844),
            "pure salt holds no more; sodium is in mg here, and 1 g of salt is 393 mg of sodium",
        ),
        in_every_entry=True,
    )
    SUGARS = MeasureEntry(
        "sugars",
        Unit.GRAM,
        nutrients=(2000, 1063),
        label=_gram("(c)(6)"),
        daily_value=Decimal(50),  # that of *added* sugars; total sugars have none
        most=_PURE,
        # The classroom's teaspoon: USDA weighs 4.2 g (SR28, NDB 19335), public messages say 4.
        grams_per_teaspoon=4,
        in_every_entry=True,
    )
    SATURATED_FAT = MeasureEntry(
        "saturated_fat",
        Unit.GRAM,
        nutrients=(1258,),
        label=LabelRule(
            "(c)(2)",
            (Step(Decimal("0.5"), until=Fraction(5), limit_is_in=False), Step(Decimal(1))),
            zero_below=Fraction(1, 2),
        ),
        daily_value=Decimal(20),
        little_or_much=True,
        percent=_WHOLE_PERCENT,
        most=_PURE,
        in_every_entry=True,
    )
    FIBER = MeasureEntry(
        "fiber",
        Unit.GRAM,
        # Foundation foods have it by AOAC 2011.25 more often than by the older methods; where a
        # record has both, the older is what SR Legacy and FNDDS go by.
        nutrients=(1079, 2033),
        label=_gram("(c)(6)"),
        daily_value=Decimal(28),
        brings=True,
        percent=_WHOLE_PERCENT,
        most=_PURE,
        in_every_entry=True,
    )
    PROTEIN = MeasureEntry(
        "protein",
        Unit.GRAM,
        nutrients=(1003,),
        label=_gram("(c)(7)"),
        daily_value=Decimal(50),
        brings=True,
        percent=_WHOLE_PERCENT,
        most=_PURE,
        in_every_entry=True,
    )
    CALCIUM = MeasureEntry(
        "calcium",
        Unit.MILLIGRAM,
        nutrients=(1087,),
        label=_vitamin("10"),
        daily_value=Decimal(1300),
        # Calcium's share of calcium carbonate, from the atomic weights 40.08, 12.01 and 16.00.
        brings=True,
        percent=_VITAMIN_PERCENT,
        most=Most(
            1000 * Fraction(4008, 10009),
            "pure calcium carbonate, as in tablets, holds no more: 400 mg of calcium in 1 g",
        ),
    )
    IRON = MeasureEntry(
        "iron",
        Unit.MILLIGRAM,
        nutrients=(1089,),
        label=_vitamin("0.1"),
        daily_value=Decimal(18),
        brings=True,
        percent=_VITAMIN_PERCENT,
        most=_PURE_IN_MG,
    )
    POTASSIUM = MeasureEntry(
        "potassium",
        Unit.MILLIGRAM,
        nutrients=(1092,),
        label=_vitamin("10"),
        daily_value=Decimal(4700),
        # Potassium's share of potassium chloride, from the atomic weights 39.10 and 35.45.
        brings=True,
        percent=_VITAMIN_PERCENT,
        most=Most(
            1000 * Fraction(3910, 7455),
            "pure potassium chloride, sold in place of salt, holds no more: 524 mg of potassium in 1 g",
        ),
    )
    VITAMIN_C = MeasureEntry(
        "vitamin_c",
        Unit.MILLIGRAM,
        nutrients=(1162,),
        label=_vitamin("1"),
        daily_value=Decimal(90),  # from memory
        brings=True,
        percent=_VITAMIN_PERCENT,
        most=_PURE_IN_MG,
    )
