"""What English claims are made of: numbers, shares, words of holding, and how exactly all is meant."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.language.en.measures import MEASURES, UNITS
from generator.language.form import Leeway

_ONES = (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen"
    " sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety"
)
_PARTS = ("third", "quarter", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")

LEEWAYS = {
    Leeway.AT_LEAST: ("at least", "no less than", "enough"),
    Leeway.AT_MOST: ("at most", "no more than"),
    Leeway.ALMOST: ("almost", "nearly", "close to", "just under", "not quite", "just about"),
    Leeway.BARELY: ("barely", "hardly", "scarcely"),
    Leeway.OVER: ("more than", "well over", "just over", "over", "a little over", "upwards of"),
    Leeway.UNDER: ("less than", "fewer than", "under", "well under", "a little under"),
    Leeway.ABOUT: ("about", "around", "roughly", "more or less", "approximately", "some"),
}
_SOME = "|".join(
    sorted((word for some in LEEWAYS.values() for word in some), key=len, reverse=True)
)
LEE = rf"(?P<leeway>(?:{_SOME})\s+)"
"""How exactly a number is meant."""
ONLY = r"(?:(?:only|just|exactly|still|precisely|a\s+full|a\s+whole|some)\s+)"
"""Words that leave a number as it is."""
MEASURE = rf"(?:{'|'.join(MEASURES.values())})\b"
"""Words that name a measure."""
WHAT = rf"(?:{'|'.join(MEASURES.values())}|grams|milligrams|mg|amount|number)"
"""What is held."""
UNIT = rf"(?:{'|'.join(UNITS.values())})"
"""Units behind a number."""
_NOT = r"(?:\s+|(?P<not>n['’]t\s+|\s+not\s+)(?P<even>even\s+)?)"
BE = rf"(?:is|are|was|were){_NOT}"
"""Words of being, which may be denied."""
HOLDS = (
    rf"(?:holds?|held|has|have|contains?|brings?|gives?|packs?|provides?|is|are|was|makes?){_NOT}"
)
"""Words of holding, and of being."""
_WORDS = "|".join(sorted(_ONES.split(), key=len, reverse=True))
NUMBER = (
    rf"(?:\d+(?:,\d{{3}})*(?:\.\d+)?(?:\s?[¼-¾])?"
    rf"|(?:a\s+hundred|{_WORDS})(?:(?:\s+|-)(?:and\s+)?(?:a\s+)?(?:{_WORDS}|hundred|thousand|half|quarter)\b)*)"
)
"""A number in digits or words."""
TIMES = rf"(?:twice|double|triple|quadruple|{NUMBER}\s+times)"
"""A multiple."""
_SHARES = "third|quarter|fifth|sixth|seventh|eighth|ninth|tenth"
PART = rf"(?:half|(?:an?|one)\s+(?:{_SHARES})|two\s+(?:thirds|fifths)|three\s+(?:quarters|fifths)|four\s+fifths)"
"""A share in words."""
PERCENT = rf"{NUMBER}\s*(?:%|percent\b|per\s+cent\b)"
"""A share in hundredths."""
PARTS = {
    "half": Fraction(1, 2),
    "two thirds": Fraction(2, 3),
    "two fifths": Fraction(2, 5),
    "three quarters": Fraction(3, 4),
    "three fifths": Fraction(3, 5),
    "four fifths": Fraction(4, 5),
    **{
        f"{article} {part}": Fraction(1, n)
        for n, part in enumerate(_PARTS, 3)
        for article in ("a", "an", "one")
    },
}
"""What each share is."""
_ON = "as|in|of|for|from|on|at|and|or|but|than|when|if|here|there|again|together"
AS_MUCH = rf"as\s+(?:much|many|big|high|large)\b(?!\s+again)(?!\s+(?!(?:{_ON})\b|{WHAT}\b)\w)|(?:of\s+)?(?:the\s+)?{WHAT}\b|(?:of\s+)?what\b|that\s+(?:of|in)\b|(?:of\s+)?that(?=\s*(?:[.,;!]|$))"
"""Words behind a multiple or share that make it one of an amount of food."""
NOT_OFTEN = r"(?!\s+(?:a|an|per|each|every|daily|weekly|in|more)\b)(?!\s+of\s+double)(?!\s+as\s+(?!much\b|many\b|big\b|high\b|large\b)\w)(?!\s+\w+er\b)(?!\s+as\s+(?:much|many)\s+(?!(?:as|in|of|for)\b)\w)"
"""No *twice a week* stands there."""
ENDS = rf"(?=\s*(?:$|[.,;:!)]|(?:than|in|on|as|for|only)\b|{WHAT}\b))"
"""Words that may follow *more*; any other word is what there is more of."""
BEFORE_MORE = r"(?:(?:a\s+lot|a\s+great\s+deal|much|far|way|even|still|a\s+(?:little|tiny)?\s*bit|a\s+little|slightly|somewhat|clearly)\s+)"
"""How much more, without a number."""
ROWS_WON = r"(?:(?:holds?|has|have)\s+(?P<more>more)|wins?|leads?|is\s+(?:ahead|higher)|comes?\s+out\s+(?:ahead|higher))"
"""What a side does in a row where it holds more."""
COUNTED = re.compile(
    rf"(?<!\brow\s)(?<!\brows\s)\b(?P<n>half\s+an?|{NUMBER})\s+"
    r"(?:(?:cups?|slices?|bowls?|glasses|bottles|cans|servings?|portions?|pieces?|helpings?)\s+of\s+)?$",
    re.IGNORECASE,
)
"""How many portions of a food are spoken of, right before its name."""
