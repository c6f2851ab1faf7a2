"""How often a food fits in: most days, some days, or now and then, by published rules.

The numbers are published: 5 % and 20 % of the Daily Value in a portion, and the bands of energy
density. Which of our three words each gets is ours, no source: 20 % or more of one nutrient is
*now and then*; anything between is *some days*; so is a food of high energy density, however
little of the three it holds; all the rest is *most days*.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from generator.compute.daily_values import Share, percent_of_daily_value, share
from generator.compute.energy_density import DensityBand, density, density_band
from generator.compute.rounding import to_places
from generator.compute.sugars import counts_as_added
from generator.model.food import Food
from generator.model.frequency import Frequency
from generator.model.measure import Measure


@dataclass(frozen=True, slots=True)
class Override:
    """An educator's own word, with why."""

    frequency: Frequency
    reason: str
    """A sentence for the families who ask."""


@dataclass(frozen=True, slots=True)
class HowOften:
    """The word for a portion of a food and what decided it."""

    frequency: Frequency | None
    """Nothing where the record lacks a value that would decide: a blank is not zero."""
    rule: str
    """The rule that decided, with its numbers, or the educator's reason."""
    computed: Frequency | None
    """What the rules say, also where an educator has overridden them."""


def how_often(food: Food, grams: Fraction, override: Override | None = None) -> HowOften:
    """The word for a portion.

    Args:
        food: its record brings values for 100 g, its group and whether it is drunk.
        grams: weight of the portion.
        override: an educator's word; the computed one is kept beside it.

    Raises:
        ValueError: the portion does not weigh anything, or an override gives no reason.

    Sources: FDA consumer guidance (5 % DV or less is low, 20 % or more is high); Daily Values
    21 CFR 101.9; energy density bands Rolls 2009, Physiol Behav 97:609-615.
    """
    if grams <= 0:
        raise ValueError(f"a portion cannot weigh {grams} g")
    computed, rule = _decide(food, grams)
    if override is None:
        return HowOften(computed, rule, computed)
    if not override.reason.strip():
        raise ValueError("an override of how often needs its reason")
    return HowOften(override.frequency, override.reason, computed)


def _decide(food: Food, grams: Fraction) -> tuple[Frequency | None, str]:
    percents, blanks = _percents(food, grams)
    fullest = max(percents, key=lambda measure: percents[measure], default=None)
    if fullest and share(percents[fullest]) is Share.HIGH:
        return Frequency.NOW_AND_THEN, _says(fullest, percents[fullest], "20 % or more is high")
    if blanks:
        return None, f"the record has no value for {' and '.join(blanks)}, and a blank is not zero"
    if fullest and share(percents[fullest]) is Share.BETWEEN:
        return Frequency.SOME_DAYS, _says(fullest, percents[fullest], "between 5 % and 20 %")
    if not food.entry.drink:
        energy = food.value(Measure.ENERGY)
        if energy is None:
            return None, "the record has no value for energy, and a blank is not zero"
        held = density(Fraction(energy), Fraction(100))
        if density_band(held) is DensityBand.HIGH:
            return (
                Frequency.SOME_DAYS,
                f"energy density {to_places(held, 2)} kcal/g: above 4 is high",
            )
    least = "; ".join(_says(measure, percent) for measure, percent in percents.items())
    return Frequency.MOST_DAYS, f"{least}: 5 % or less is low"


def _percents(food: Food, grams: Fraction) -> tuple[dict[Measure, int], list[str]]:
    """Percent of the Daily Value of the portion by measure, and the measures that are blank."""
    percents: dict[Measure, int] = {}
    blanks: list[str] = []
    measures = [Measure.SATURATED_FAT, Measure.SODIUM]
    if counts_as_added(food):
        measures.append(Measure.SUGARS)
    for measure in measures:
        held = food.value(measure)
        if held is None:
            blanks.append(_NAMES[measure])
        else:
            percents[measure] = percent_of_daily_value(measure, Fraction(held) * grams / 100)
    return percents, blanks


_NAMES = {
    Measure.SATURATED_FAT: "saturated fat",
    Measure.SODIUM: "sodium",
    Measure.SUGARS: "sugars",
}


def _says(measure: Measure, percent: int, rule: str = "") -> str:
    tail = f": {rule}" if rule else ""
    return f"{_NAMES[measure]} {percent} % of the Daily Value in the portion{tail}"
