"""Reading formulas against published examples, and syllable counters apart from them."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

import pytest

from generator.language import language_of
from generator.language.en.reading_level import READING_LEVEL as ENGLISH
from generator.language.en.reading_level import grade_level
from generator.language.en.syllables import syllables as english_syllables
from generator.language.es.reading_level import perspicuity
from generator.language.es.syllables import syllables as spanish_syllables
from generator.language.reading_level import Counts

PLATYPUS = Counts(words=13, sentences=1, syllables=24)
"""“The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.”"""
COOL_DOGS = Counts(words=5, sentences=1, syllables=7)
"""“Cool dogs wear da sunglasses.”, from the tests of the PyPI package textstat."""


@pytest.mark.parametrize(
    ("counts", "formula", "printed"),
    [
        (PLATYPUS, grade_level, "11.3"),  # S: the usual worked example, printed as 11.3
        (COOL_DOGS, grade_level, "2.9"),  # R: textstat's tests, 2.88
    ],
)
def test_english_formulas_give_the_published_examples(
    counts: Counts, formula: Callable[[Counts], Decimal], printed: str
) -> None:
    assert round(formula(counts), 1) == Decimal(printed)


def test_the_spanish_formula_follows_its_constants() -> None:
    # S: constants from textstat's source; C: 20 words, 2 sentences, 40 syllables
    counts = Counts(words=20, sentences=2, syllables=40)
    assert perspicuity(counts) == Decimal("206.835") - Decimal("62.3") * 2 - 10


@pytest.mark.parametrize(
    ("word", "syllables"),
    # from memory, as a dictionary divides them
    [
        ("cool", 1), ("sunglasses", 3), ("australian", 4), ("platypus", 3), ("seemingly", 3),
        ("hybrid", 2), ("reptilian", 4), ("creature", 2), ("apple", 2), ("energy", 3),
        ("kilocalories", 6), ("wanted", 2), ("likes", 1), ("lunches", 2), ("people", 2),
        ("fiber", 2), ("sodium", 3), ("little", 2), ("ideas", 3), ("difference", 3), ("once", 1),
        ("sandwich", 2), ("coconut", 3), ("radio", 3), ("minutes", 2), ("closed", 1),
        ("needed", 2), ("beautiful", 3), ("nation", 2), ("special", 2), ("usual", 3),
    ],
)  # fmt: skip
def test_english_words(word: str, syllables: int) -> None:
    assert english_syllables(word) == syllables


@pytest.mark.parametrize(
    ("word", "syllables"),
    # from memory, by the rules of the Ortografía of the RAE: strong vowels part, weak ones join
    [
        ("casa", 2), ("río", 2), ("agua", 2), ("día", 2), ("energía", 4), ("queso", 2),
        ("guitarra", 3), ("pingüino", 3), ("aire", 2), ("ciudad", 2), ("leer", 2), ("poeta", 3),
        ("movimiento", 4), ("diferencia", 4), ("aéreo", 4), ("buey", 1), ("muy", 1), ("y", 1),
        ("mayo", 2), ("ahora", 3), ("búho", 2), ("país", 2), ("baúl", 2), ("cuidar", 2),
        ("huevo", 2), ("guion", 1), ("azúcares", 4),
    ],
)  # fmt: skip
def test_spanish_words(word: str, syllables: int) -> None:
    assert spanish_syllables(word) == syllables


def test_the_whole_way_gives_the_published_grade() -> None:
    found = ENGLISH.reading("Cool dogs wear da sunglasses.")
    assert found
    assert found.grade == Decimal("2.9")


def test_hard_sentences_are_named_hardest_first() -> None:
    text = "We eat an apple at home. The international organisation recommends considerable moderation. We drink some water with it."
    assert ENGLISH.hardest(text, 1) == (
        "The international organisation recommends considerable moderation",
    )


def test_nothing_is_said_without_words_or_without_a_formula() -> None:
    assert ENGLISH.reading("12 + 3") is None
    assert language_of("de").reading_level is None
    with pytest.raises(ValueError, match="no reading level"):
        grade_level(Counts(0, 0, 0))
