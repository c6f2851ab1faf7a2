"""Number words are read as num2words writes them, in English and in Spanish.

The tables hold every number from 0 to 2,000, every 37th up to 9,999 and 9,999 itself, written once
by the PyPI package num2words 0.5.14: ``num2words(number, lang=language)``.
"""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from generator.language import language_of

TABLES = Path(__file__).parents[1] / "examples"


@pytest.mark.parametrize(
    ("language", "before", "after"), [("en", "It holds", "grams"), ("es", "Tiene", "gramos")]
)
def test_every_number_word(language: str, before: str, after: str) -> None:
    table = (TABLES / f"number-words.{language}.txt").read_text("utf-8").splitlines()
    assert len(table) == 2001 + 218
    for line in table:
        number, _, words = line.partition(" ")
        for text in (
            f"{before} {words} {after}.",
            words.upper(),
            words.capitalize().replace(" ", "\n"),
        ):
            assert [one.value for one in language_of(language).numbers_in(text)] == [
                Decimal(number)
            ], text


@pytest.mark.parametrize(
    ("language", "text", "values"),
    [
        ("en", "one hundred ten", "110"),
        ("en", "a hundred ten or one hundred and ten", "110 110"),
        ("en", "twelve hundred fifty", "1250"),
        ("en", "four ten, two eighty and one twenty-five", "410 280 125"),
        ("en", "one ten and two ones", "1 10 2"),
        ("en", "240, 1,020 and 2.5", "240 1020 2.5"),
        ("en", "two and a half, two point five", "2.5 2.5"),
        ("en", "ninety and four hundred ten", "90 410"),
        ("en", "four hundred ten minus ninety", "410 90"),
        ("en", "one, two, three", "1 2 3"),
        ("en", "one thousand, two", "1000 2"),
        ("en", "someone often tends to be alone", ""),
        ("en", "the second, a third, hundreds and thousands", ""),
        ("es", "ciento diez", "110"),
        ("es", "dos mil trescientos diez", "2310"),
        ("es", "mil veinte o 1.020 o 1,020 o 1020", "1020 1020 1020 1020"),
        ("es", "2,5 y dos y medio", "2.5 2.5"),
        ("es", "doscientas cuarenta y una", "241"),
        ("es", "dieciseis, dieciséis, diez y seis", "16 16 16"),
        ("es", "veintiún mil", "21 1000"),
        ("es", "noventa y cuatrocientos diez", "90 410"),
        ("es", "la segunda fila, un tercio y la once", "1 11"),
        ("de", "zwei, 3", "3"),
    ],
)
def test_numbers_in_a_sentence(language: str, text: str, values: str) -> None:
    assert [f"{one.value:f}" for one in language_of(language).numbers_in(text)] == values.split()
