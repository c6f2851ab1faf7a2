"""All that is known of English."""

from __future__ import annotations

from generator.language.en.around_numbers import AROUND_NUMBERS
from generator.language.en.claims import CLAIMS
from generator.language.en.kind_words import UNKIND_WORDS
from generator.language.en.number_words import NUMBER_WORDS
from generator.language.en.phrases import PHRASES
from generator.language.en.reading_level import READING_LEVEL
from generator.language.en.said_of import SAID_OF
from generator.language.en.spelled import spelled
from generator.language.language import Language

LANGUAGE = Language(
    "en",
    NUMBER_WORDS,
    AROUND_NUMBERS,
    SAID_OF,
    CLAIMS,
    PHRASES,
    UNKIND_WORDS,
    READING_LEVEL,
    spelled,
)
