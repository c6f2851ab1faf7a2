"""What can be checked in a language of which nothing is known here: digits before the sign of a unit.

Whatever needs words is let through, so that nothing right is questioned.
"""

from __future__ import annotations

import re

from generator.language.around_numbers import AroundNumbers
from generator.language.form import Leeway
from generator.language.grammar import Grammar
from generator.language.language import Language
from generator.language.number_words import Nothing, NumberWords, Parts
from generator.language.phrases import Phrases
from generator.language.said_of import SaidOf
from generator.model.measure import Unit

_NEVER, _ALWAYS = re.compile("(?!)"), re.compile("")
_UNITS = rf"\s*(?:{'|'.join(Unit)})(?!\w)"
"""Signs that are the same in every language written in Latin letters (International System of Units)."""

_NUMBER_WORDS = NumberWords(
    read=lambda _tokens, _at: None,
    begin=frozenset(),
    sign=re.compile(r"\d"),
    thousands=re.compile(r"\d{1,3}(?:[.,]\d{3})+"),
    plain=re.compile(r"\d+(?:[.,]\d{1,2})?"),
    spaced=False,
    point=frozenset(),
    no_point=frozenset(),
    articles=frozenset(),
    holds=frozenset(),
    parts=Parts(
        before={},
        behind={},
        couple={},
        large={},
        loose=frozenset(),
        one=frozenset(),
        alone={},
        never_alone=frozenset(),
        units=frozenset(),
        of=frozenset(),
        held=frozenset(),
        goes_on=frozenset(),
    ),
    nothing=Nothing(frozenset(), _NEVER, {}),
)
_AROUND_NUMBERS = AroundNumbers(
    labels_before=re.compile(r"\d\s$"),  # the end of a number whose thousands a space parts
    ordinal_after=re.compile(f"(?!{_UNITS})"),  # a number without a unit may be anything
    time_before=_NEVER,
    clock_before=_NEVER,
    time_after=_NEVER,
    month_before=_NEVER,
    month_after=_NEVER,
    year_before=_NEVER,
    fraction_after=_NEVER,
    multiple_after=_NEVER,
    repeats_after=_NEVER,
    given_after=_NEVER,
    begins=_NEVER,
    unit_after=re.compile(_UNITS),
    follows=frozenset(),
    of_after=_NEVER,
    holds_before=_NEVER,
    listed=_NEVER,
    sum_words=_ALWAYS,  # whose number it is, only words could tell: it may be any of the lesson
    more_after=_NEVER,
    carries_on=_NEVER,
    joined=re.compile(r"\s*[,–-]\s*"),
    aloud=re.compile(r"[\s,.…;:!-]*"),
)
_SAID_OF = SaidOf(
    units={unit: re.compile(rf"\s*{unit}(?!\w)") for unit in Unit},
    teaspoons=_NEVER,
    counts=_NEVER,
    groups={},
    gap_before=_NEVER,
    left_over=_NEVER,
    bound_before=_NEVER,
    food_before=_NEVER,
    part_of_more=_NEVER,
    row_after=_NEVER,
    operator_after=_NEVER,
    pause=_NEVER,
    food_word=0,
)
_CLAIMS = Grammar(
    claims=(),
    numbers={},
    leeways=((Leeway.ABOUT, _ALWAYS),),  # whether a number is meant roughly, only words could tell
    measures={},
    doubt=_NEVER,
    denial=_NEVER,
    reported=_NEVER,
    supposed=_NEVER,
    states=_NEVER,
    telling=_NEVER,
    rows=_NEVER,
    row=_NEVER,
    last=_NEVER,
    total=_NEVER,
    gap=_NEVER,
    together=_NEVER,
    counted=_NEVER,
    percent=_NEVER,
    said=_NUMBER_WORDS,
    amounts=_NEVER,
    clauses=_NEVER,
    plain=frozenset(),
    times_word="",
)
_PHRASES = Phrases("", "", "", "", "", "", "", "", (), ())
"""Nothing is claimed here, so nothing has to be put right."""


def plain(tag: str) -> Language:
    """A language without a folder of its own.

    Args:
        tag: of BCP 47, without a region.
    """
    return Language(tag, _NUMBER_WORDS, _AROUND_NUMBERS, _SAID_OF, _CLAIMS, _PHRASES, (), None)
