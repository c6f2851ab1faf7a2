"""What tells in English what a number is said of."""

from __future__ import annotations

import re

from generator.language.around_numbers import after, before, words
from generator.language.en.measures import UNITS
from generator.language.said_of import SaidOf

_LEEWAY = r"(?:(?:about|around|exactly|only|just|almost|nearly|over|under)\s+)?"

SAID_OF = SaidOf(
    units={unit: after(rf"(?:more |of )?(?:{called})") for unit, called in UNITS.items()},
    teaspoons=after(r"(?:more )?(?:teaspoons?|tsp)"),
    counts=after(r"(?:counts?|moves?)", r"times(?!\s+(?:as|the|more|what|over|and)\b)"),
    groups={
        1: after("ones"),
        2: after("twos"),
        4: after("fours"),
        5: after("fives"),
        10: after("tens"),
        20: after("twenties"),
        100: after("hundreds"),
    },
    gap_before=re.compile(
        r"\b(?:gap|difference)\b[^.;!?\d]{0,60}?(?:\b(?:is|are|was|of|makes?|comes\s+to)|=)\s+"
        rf"{_LEEWAY}$",
        re.IGNORECASE,
    ),
    left_over=after(r"(?:\w+\s+){0,2}(?:left\s+over|rests?)"),
    bound_before=before(
        r"within",
        r"(?<!add )(?<!adds )(?<!added )up\s+to",
        r"below",
        r"numbers\s+to",
        r"count(?:s|ing)?\s+(?:from\s+[\w-]+\s+)?(?:up\s+|down\s+)?to",
    ),
    food_before=re.compile(
        r"(?P<food>[^,;:.!?]{3,80}?)\s+(?:holds?|held|contains?|has|brings?|gives?)\s+"
        rf"{_LEEWAY}$",
        re.IGNORECASE,
    ),
    part_of_more=words("with", "without", "plus", "and", "or"),
    row_after=after(r"(?:of|in|for)\s+(?:the\s+)?(?:\w+\s+)?rows?"),
    operator_after=re.compile(
        r"\s*(?:[-−–+×÷*/]\s*\d|(?:minus|plus|take\s+away|less|divided|times)\s+\d)", re.IGNORECASE
    ),
    pause=words(r"pause", r"stop the (?:video|film)"),
    food_word=-1,
)
