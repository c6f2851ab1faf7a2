"""All that is known of Spanish."""

from __future__ import annotations

from generator.language.es.around_numbers import AROUND_NUMBERS
from generator.language.es.claims import CLAIMS
from generator.language.es.kind_words import UNKIND_WORDS
from generator.language.es.number_words import NUMBER_WORDS
from generator.language.es.phrases import PHRASES
from generator.language.es.reading_level import READING_LEVEL
from generator.language.es.said_of import SAID_OF
from generator.language.es.spelled import spelled
from generator.language.language import Language

LANGUAGE = Language(
    "es",
    NUMBER_WORDS,
    AROUND_NUMBERS,
    SAID_OF,
    CLAIMS,
    PHRASES,
    UNKIND_WORDS,
    READING_LEVEL,
    spelled,
)
