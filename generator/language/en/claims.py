"""How English claims something about two numbers."""

from __future__ import annotations

import re
from fractions import Fraction

from generator.language.en.measures import MEASURES, UNITS
from generator.language.form import Form, Leeway
from generator.language.grammar import Grammar, Kind, words

_ONES = ("two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
_PARTS = ("third", "quarter", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_LEEWAYS = {
    Leeway.ALMOST: ("almost", "nearly", "close to", "just under", "not quite"),
    Leeway.OVER: ("more than", "well over", "just over", "over"),
    Leeway.UNDER: ("less than", "fewer than", "under"),
    Leeway.ABOUT: ("about", "around", "roughly", "more or less"),
}
_LEE = rf"(?P<leeway>(?:{'|'.join(word for some in _LEEWAYS.values() for word in some)})\s+)"
_WHAT = rf"(?:{'|'.join(MEASURES.values())}|grams|milligrams|mg|amount|number)"
_UNIT = rf"(?:{'|'.join(UNITS.values())})"
_HOLDS = r"(?:holds?|held|has|have|contains?|brings?|gives?|is|are|was|makes?)\s+"
_NUMBER = rf"(?:\d+(?:\.\d+)?|{'|'.join(_ONES)})"
_TIMES = rf"(?P<n>twice|double|triple|{_NUMBER}\s+times)"
_PART = r"(?P<n>half|(?:an?|one)\s+(?:third|quarter|fifth|sixth|seventh|eighth|ninth|tenth)|two\s+thirds|three\s+quarters)"
_AS_MUCH = rf"as\s+(?:much|many|big|high|large)\b|(?:of\s+)?(?:the\s+)?{_WHAT}\b|(?:of\s+)?what\b|that\s+(?:of|in)\b"
_NOT_OFTEN = r"(?!\s+(?:a|an|per|each|every|daily|weekly|in|more)\b)(?!\s+of\s+double)"
_ENDS = rf"(?=\s*(?:$|[.,;:!)]|(?:than|in|on|as|for|only)\b|{_WHAT}\b))"

_SIGNS = {
    Form.TIMES: ("twice", "double", "triple", "times"),
    Form.SHARE: (
        "half",
        "third",
        "quarter",
        "fifth",
        "sixth",
        "seventh",
        "eighth",
        "ninth",
        "tenth",
    ),
    Form.SAME: ("same", "as much", "as many"),
    Form.GAP: ("more", "less", "fewer"),
    Form.MOST: ("most", "highest"),
    Form.LEAST: ("least", "fewest", "lowest"),
    Form.MORE: ("more",),
    Form.LESS: ("less", "fewer"),
}
_PLAIN = "the and with without from for one two cup cups side sides food foods row rows our your his her its holds hold has have more less most least same half low"


def _kind(form: Form, text: str) -> Kind:
    return Kind(form, _SIGNS[form], re.compile(rf"\b{text}", re.IGNORECASE))


CLAIMS = Grammar(
    claims=(
        _kind(Form.TIMES, rf"{_LEE}?{_TIMES}\s+(?:{_AS_MUCH}|more\s+(?:{_WHAT}|than)\b)"),
        _kind(Form.TIMES, rf"{_LEE}(?P<n>double|triple)\b(?!\s+of\s+double)"),
        _kind(Form.TIMES, rf"{_HOLDS}{_LEE}?{_TIMES}\b{_NOT_OFTEN}(?=\s|[.,;!]|$)"),
        _kind(Form.SHARE, rf"{_LEE}?{_PART}\s+(?:{_AS_MUCH})"),
        _kind(Form.SHARE, rf"{_HOLDS}{_LEE}{_PART}\s+(?:of\s+)?(?:the|that)\b"),
        _kind(Form.SAME, rf"{_LEE}?the\s+same\s+(?:amount|{_WHAT})\b"),
        _kind(
            Form.SAME,
            rf"(?:holds?|has|have|contains?|gives?)\s+{_LEE}?(?:exactly\s+)?the\s+same{_ENDS}",
        ),
        _kind(Form.SAME, rf"{_HOLDS}(?:just\s+)?as\s+(?:much|many)(?:\s+{_WHAT})?\s+as\b"),
        _kind(
            Form.GAP,
            rf"{_LEE}?(?P<n>\d+(?:,\d{{3}})*(?:\.\d+)?)\s*{_UNIT}?\s+(?:more\b|(?P<less>less|fewer)\b)(?=\s*(?:[.,;!]|$|than\b|{_WHAT}\b))",
        ),
        _kind(
            Form.MOST,
            rf"(?:{_HOLDS}|comes?\s+with\s+)the\s+(?:most|highest)\b(?!\s+(?:of\s+the\s+time|fun))",
        ),
        _kind(Form.LEAST, rf"(?:{_HOLDS}|comes?\s+with\s+)the\s+(?:least|fewest|lowest)\b"),
        _kind(
            Form.MORE,
            rf"(?:holds?|held|has|have|contains?|brings?|gives?)\s+(?:a\s+lot\s+|much\s+|far\s+|a\s+(?:little|bit)\s+|slightly\s+)?more\b{_ENDS}",
        ),
        _kind(
            Form.LESS,
            rf"(?:holds?|held|has|have|contains?|brings?|gives?)\s+(?:a\s+lot\s+|much\s+|far\s+|a\s+(?:little|bit)\s+|slightly\s+)?(?:less|fewer)\b{_ENDS}",
        ),
    ),
    numbers={
        "twice": Fraction(2),
        "double": Fraction(2),
        "triple": Fraction(3),
        **{one: Fraction(n) for n, one in enumerate(_ONES, 2)},
        **{f"{one} times": Fraction(n) for n, one in enumerate(_ONES, 2)},
        "one": Fraction(1),
        **{
            name: Fraction(n)
            for n, name in enumerate(("first", "second", "third", "fourth", "fifth", "sixth"), 1)
        },
        "half": Fraction(1, 2),
        "two thirds": Fraction(2, 3),
        "three quarters": Fraction(3, 4),
        **{
            f"{article} {part}": Fraction(1, n)
            for n, part in enumerate(_PARTS, 3)
            for article in ("a", "an", "one")
        },
    },
    leeways=tuple((leeway, words(*some)) for leeway, some in _LEEWAYS.items()),
    measures={measure: words(names) for measure, names in MEASURES.items()},
    doubt=words(
        "not",
        "never",
        "no",
        "nor",
        "if",
        "imagine",
        "suppose",
        "would",
        "could",
        "whether",
        "whichever",
    ),
    telling=words(r"why", r"how come"),
    rows=re.compile(
        r"\brows?\s+(?:number\s+)?(?P<after>(?:one|two|three|four|five|six|\d+)(?:(?:,|\s+and)\s+(?:one|two|three|four|five|six|\d+))*)\b"
        r"|\b(?P<before>(?:first|second|third|fourth|fifth|sixth|last)(?:(?:,|\s+and)\s+(?:the\s+)?(?:first|second|third|fourth|fifth|sixth|last))*)\s+rows?\b",
        re.IGNORECASE,
    ),
    row=words("rows?"),
    last=words("last"),
    total=words("total", "totals", "altogether", "all together", "in all", "added up", "all rows"),
    amounts=words(
        rf"(?P<n>{_NUMBER})\s+(?:cups?|slices?|bowls?|glasses|bottles|cans|servings?|portions?|pieces?|people|friends|spoons|teaspoons)"
    ),
    clauses=re.compile(r"[,;:—–]\s|\b(?:but|while|whereas)\b", re.IGNORECASE),
    plain=frozenset(_PLAIN.split()),
    times_word="times",
)
