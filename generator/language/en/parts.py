"""Halves, dozens and zero as English says them."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.language.en.measures import MEASURES
from generator.language.number_words import Nothing, Parts, table

_HALF, _QUARTER, _THREE = Fraction(1, 2), Fraction(1, 4), Fraction(3, 4)
_HOLDS = r"(?:holds?|held|contains?|has|had|brings?|gives?|comes\s+with|is)"
_MEASURE = rf"(?P<measure>{'|'.join(MEASURES.values())})"

PARTS = Parts(
    before=table(
        {
            **dict.fromkeys(("half", "half a", "half of a", "a half", "one half", "one half of a"), _HALF),
            **dict.fromkeys(("a quarter of a", "one quarter of a", "quarter of a", "a quarter", "one quarter"), _QUARTER),
            **dict.fromkeys(("three quarters of a", "three quarters", "three quarter"), _THREE),
        }
    ),
    behind=table(
        {
            **dict.fromkeys(("and a half", "and one half"), _HALF),
            **dict.fromkeys(("and a quarter", "and one quarter"), _QUARTER),
            "and three quarters": _THREE,
        }
    ),
    couple=table(dict.fromkeys(("a couple of", "a couple", "couple of"), Fraction(2))),
    large={"dozen": 12, "score": 20, "hundred": 100, "thousand": 1000},
    loose=frozenset({"dozen", "score"}),
    one=frozenset({"a", "an"}),
    alone={"hundred": 100},
    never_alone=frozenset(
        ["few", "several", "many", "some", "every", "per", "the", "of", "couple", "this", "that", "these", "those", "my", "our", "first"]
    ),
    units=frozenset(
        ["g", "gram", "grams", "mg", "milligram", "milligrams", "kcal", "kilocalorie", "kilocalories", "calorie", "calories", "teaspoon", "teaspoons"]
    ),
    of=frozenset({"of"}),
    held=frozenset(
        ["sugar", "sugars", "sodium", "saturated", "fat", "fiber", "fibre", "protein", "calcium", "iron", "potassium", "vitamin", "energy"]
    ),
    goes_on=frozenset(["of", "more", "less", "in", "than", "for", "and", "or", "but", "is", "are"]),
)  # fmt: skip

NOTHING = Nothing(
    alone=frozenset({"nothing", "none"}),
    of=re.compile(
        rf"\b{_HOLDS}\s+(?P<said>(?:no|zero|0|without|free\s+of|without\s+any)\s+{_MEASURE})\b"
        r"(?!\s+added|-)",
        re.IGNORECASE,
    ),
    measures={measure: re.compile(name, re.IGNORECASE) for measure, name in MEASURES.items()},
)
