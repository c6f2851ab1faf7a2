"""A number is spelled as num2words writes it, in English without its *and* and its comma.

The tables are those of ``tests/language/test_number_words.py``; what is spelled is read back by our
own reader of number words.
"""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from generator.language import language_of

TABLES = Path(__file__).parents[1] / "examples"


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_number_is_spelled_as_in_the_table(language: str) -> None:
    spelled = language_of(language).spelled
    assert spelled
    table = (TABLES / f"number-words.{language}.txt").read_text("utf-8").splitlines()
    for line in table:
        number, _, words = line.partition(" ")
        expected = words.replace(",", "").replace(" and ", " ") if language == "en" else words
        assert spelled(Decimal(number)) == expected


@pytest.mark.parametrize(
    ("language", "number", "words"),
    [
        ("en", "12.5", "twelve point five"),
        ("en", "410.0", "four hundred ten"),
        ("es", "12.5", "doce punto cinco"),
        ("es", "21021", "veintiún mil veintiuno"),
    ],
)
def test_decimals_and_thousands(language: str, number: str, words: str) -> None:
    """US Spanish says the decimal sign *punto* (common practice, no source)."""
    spelled = language_of(language).spelled
    assert spelled
    assert spelled(Decimal(number)) == words


def test_a_language_without_a_folder_spells_nothing() -> None:
    assert language_of("so").spelled is None
