"""What stands around a spoken number in English."""

from __future__ import annotations

import re

from generator.language.around_numbers import AroundNumbers, after, before, counting, joining, words
from generator.language.en.measures import UNITS

_FOLLOWS = (
    "than and or minus plus take less more fewer from in for at on to is are was makes make gives"
    " give leaves leave but so while too there here with equals altogether total against as that"
    " which who when then over by because now each per again also still not only just even if"
    " take-away together away left exactly about almost nearly if it its he she they you we I"
)

_MONTHS = "January|February|March|April|May|June|July|August|September|October|November|December"

AROUND_NUMBERS = AroundNumbers(
    labels_before=before(
        "rows?", "steps?", "stops?", "parts?", "pages?", "grades?", "lessons?", "chapters?",
        "questions?", "problems?", "cards?", "slides?", "rounds?", "levels?", "rooms?", "numbers?",
        "verses?", "weeks?", "ages?", "aged", "stages?", "figures?", "channel", "bus", "no.",
    ),
    ordinal_after=after("st", "nd", "rd", "th", "º", "ª"),
    time_before=before("at", "until", "till", "by", "before", "around", "after", "past", "to"),
    clock_before=before("at", "until", "till", "by", "before", "after"),
    time_after=after(
        r"(?:more\s+)?(?:seconds?|minutes?|hours?|days?|nights?|weeks?|months?|years?|birthdays?)",
        r"o['’]?\s?clock", r"a\.?m\.?", r"p\.?m\.?", "noon",
        r"times\s+(?:a|per|each|every)\s+(?:day|week|month|year|morning|minute)",
    ),
    month_before=re.compile(rf"\b(?:{_MONTHS})\s+(?:the\s+)?$"),
    month_after=re.compile(rf"\s+(?:of\s+)?(?:{_MONTHS})\b"),
    year_before=before("in", "since", "of", "year", "from", "until", "spring", "summer", "winter"),
    fraction_after=after(
        "hal(?:f|ves)", "thirds?", "quarters?", "fourths?", "fifths?", "sixths?", "eighths?",
        "tenths?", "percent", "per cent", "%", "out of",
    ),
    multiple_after=after(r"times\s+(?:as|the|more|what|over|and)", "-?fold", "x"),
    repeats_after=after("times"),
    given_after=after("for the"),
    begins=re.compile(r"(?:^|[,;:])\s*$"),
    unit_after=after(
        f"(?:more |big |little )?(?:{'|'.join(UNITS.values())})",
        "teaspoons?", "counts?", "times", "moves?", "tens", "hundreds", "ones", "twenties", "twos",
        "fours", "fives",
    ),
    follows=frozenset(_FOLLOWS.split()),
    of_after=after(r"of\s+(?:them|us|you|these|those|the|my|your|our|his|her|their|each|every)"),
    holds_before=before(
        "holds?", "held", "contains?", "has", r"(?<!\bI )(?<!\bwe )(?<!\byou )(?<!\bthey )have", "brings?", "gives?",
        between=r"(?:(?:about|around|exactly|only|just|almost|nearly|over|under|minus|plus)\s+)?",
    ),
    listed=re.compile(
        r"\b(?:holds?|contains?|has)\s+[^,;.]+[,;]\s+(?:and\s+)?the\s+(?:\w+\s+){1,3}$", re.IGNORECASE
    ),
    sum_words=words(
        "minus", "plus", "subtract", "take", "taken", "add", "added", "gaps?", "difference", "total",
        "altogether", "all together", "in all", "tens", "twenties", "counts?", "makes?", "equals",
        "than", "more", "less", "fewer", "left", "between", "apart", "beats?", "outdo(?:es)?", "ahead", "behind", "leads?", "times", "steps?", "moves?",
    ),
    more_after=after(r"(?:\w+\s+)?(?:more|less|fewer|left|apart)"),
    carries_on=words(r"^(?:and |but |so )?(?:it|they|that one|this one|that|this|these|those)"),
    joined=joining("and", "or", "to"),
    aloud=counting("and", "then"),
)  # fmt: skip
