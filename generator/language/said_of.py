"""The words beside a number that tell what of a lesson it is said of: its unit, a gap, a count, a bound."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from generator.model.measure import Unit


@dataclass(frozen=True, slots=True)
class SaidOf:
    """Patterns of one language; all ignore case.

    Those called *before* are searched in the text that ends where the number begins, the others are
    matched against the text that begins where it ends.
    """

    units: Mapping[Unit, re.Pattern[str]]
    """What the units of measures are called: *320 more kilocalories*."""
    teaspoons: re.Pattern[str]
    """A household measure that sugars are shown in as well."""
    counts: re.Pattern[str]
    """Counts, times, moves: the number says how often something is done."""
    groups: Mapping[int, re.Pattern[str]]
    """By size what a number is made of: *32 tens*, *16 twos*."""
    gap_before: re.Pattern[str]
    """*The gap in row one is*: the number is that gap, and no step on the way to it."""
    left_over: re.Pattern[str]
    """*5 are left over*."""
    bound_before: re.Pattern[str]
    """*Within 100*: how far numbers go, and none of them."""
    food_before: re.Pattern[str]
    """*A cup of carrot soup holds*: what is said to hold the number, in the group ``food``."""
    part_of_more: re.Pattern[str]
    """*The pot with*, before a food's name: it is not that food alone that holds the number."""
    row_after: re.Pattern[str]
    """*26 of row two*: the number is one of the lesson's."""
    operator_after: re.Pattern[str]
    """*Minus 170*: the number is a step of a calculation, and not what comes out."""
    pause: re.Pattern[str]
    """*Pause here*: the learner is told that the player halts."""
    food_word: int
    """Which word of a food's name says what it is: the last in *carrot soup*, the first in *sopa de zanahoria*."""
