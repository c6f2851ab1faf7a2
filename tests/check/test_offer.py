"""The phrase offered in place of a wrong one is itself never questioned."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.check.claims.claim import Claim
from generator.check.claims.judge import holds
from generator.check.claims.offer import offer
from generator.check.claims.pair import Pair
from generator.check.claims.read import claims_of
from generator.language import KNOWN, Language, language_of
from generator.language.form import Form, Leeway

WRONG = Claim(Form.TIMES, Leeway.PLAIN, Fraction(2), "twice", 0, 5)


def offered(first: int, second: int, language: str = "en") -> str:
    return offer(
        WRONG, Pair(Decimal(first), Decimal(second)), "kcal", language_of(language).phrases
    ).split("`")[1]


@pytest.mark.parametrize(
    ("first", "second", "english", "spanish"),
    [
        (410, 90, "more than four times", "más de cuatro veces"),
        (90, 410, "less than a quarter", "menos de un cuarto"),
        (200, 100, "twice", "el doble"),
        (205, 100, "about twice", "más o menos el doble"),
        (230, 100, "more than twice", "más del doble"),
        (180, 100, "almost twice", "casi el doble"),
        (100, 180, "more than half", "más de la mitad"),
        (100, 200, "half", "la mitad"),
        (340, 100, "more than three times", "más del triple"),
        (150, 100, "50 kcal more", "50 kcal más"),
        (100, 150, "50 kcal less", "50 kcal menos"),
        (100, 100, "the same", "lo mismo"),
        (105, 100, "about the same", "más o menos lo mismo"),
        (5000, 100, "more than ten times", "más de diez veces"),
        (100, 0, "100 kcal more", "100 kcal más"),
    ],
)
def test_phrase(first: int, second: int, english: str, spanish: str) -> None:
    assert offered(first, second) == english
    assert offered(first, second, "es") == spanish


_SENTENCES = {
    ("en", False, False): "The pie holds {} the energy of the apple.",
    ("en", True, False): "The pie holds {}.",
    ("es", False, False): "El pastel tiene {} que la manzana.",
    ("es", True, False): "El pastel tiene {} que la manzana.",
    ("es", False, True): "El pastel tiene {} la energía de la manzana.",
}
"""By language, whether the phrase ends the sentence, and whether a measure has to follow."""


@given(st.integers(1, 2000), st.integers(1, 2000), st.sampled_from(tuple(KNOWN.values())))
def test_an_offered_phrase_is_read_back_and_holds(
    first: int, second: int, language: Language
) -> None:
    phrase = offered(first, second, language.tag)
    sentence = _SENTENCES[language.tag, "kcal" in phrase or "same" in phrase, "veces" in phrase]
    sentence = sentence.format(phrase)
    claims = list(claims_of(sentence, language.claims))
    assert claims, sentence
    for claim in claims:
        assert holds(claim, Pair(Decimal(first), Decimal(second))), (claim, first, second)
