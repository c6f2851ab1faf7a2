"""Reading formulas against published examples, and syllable counters apart from them."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

import pytest

from generator.language import KNOWN, language_of
from generator.language.en.reading_level import READING_LEVEL as ENGLISH
from generator.language.en.reading_level import grade_level
from generator.language.es.reading_level import grade_of_perspicuity, perspicuity
from generator.language.reading_level import Counts
from tests.cases import Case, cases, languages

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


@pytest.mark.parametrize("case", cases("syllables", "syllables"), ids=str)
def test_syllables(case: Case) -> None:
    formula = language_of(case.language).reading_level
    assert formula
    assert formula.syllables(case.text) == int(case.expected)


def test_every_language_with_a_formula_has_cases() -> None:
    known = {one.tag for one in KNOWN.values() if one.reading_level}
    assert set(languages("syllables")) == known


def test_the_whole_way_gives_the_published_grade() -> None:
    found = ENGLISH.reading("Cool dogs wear da sunglasses.")
    assert found
    assert found.grade == Decimal("2.9")


def test_hard_sentences_are_named_hardest_first() -> None:
    text = "We eat an apple at home. The international organisation recommends considerable moderation. We drink some water with it."
    assert ENGLISH.hardest(text, 1) == (
        "The international organisation recommends considerable moderation",
    )


def test_a_sentence_of_four_words_is_too_short_to_be_named() -> None:
    """A single long word would make it the hardest of all."""
    four, five = "Considerable international organisational collaboration", "We eat an apple pie"
    assert ENGLISH.hardest(f"{four}. {five}.", 2) == (five,)
    assert ENGLISH.hardest(f"{four} helps. {five}.", 2) == (f"{four} helps", five)


@pytest.mark.parametrize(
    ("score", "grade"),
    # S: 86 to 100 about 6 to 10 years, 76 to 85 about 11, 66 to 75 about 12; the grades, and 50, are ours
    [
        ("100", 4),
        ("86", 4),
        ("85.9", 5),
        ("76", 5),
        ("75.9", 6),
        ("66", 6),
        ("65.9", 9),
        ("50", 9),
        ("49.9", 12),
    ],
)
def test_the_bands_of_the_spanish_scale(score: str, grade: int) -> None:
    assert grade_of_perspicuity(Decimal(score)) == grade


def test_nothing_is_said_without_words_or_without_a_formula() -> None:
    assert ENGLISH.reading("12 + 3") is None
    assert language_of("de").reading_level is None
    with pytest.raises(ValueError, match="no reading level"):
        grade_level(Counts(0, 0, 0))
