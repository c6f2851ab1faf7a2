"""Number words are read as num2words writes them, in English and in Spanish.

The tables hold every number from 0 to 9,999, written once by the PyPI package num2words 0.5.14:
``num2words(number, lang=language)``. The package text2num reads them back, as a second opinion.
"""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from generator.language import KNOWN, language_of
from tests.cases import Case, cases, languages

TABLES = Path(__file__).parents[1] / "examples"


@pytest.mark.parametrize(
    ("language", "before", "after"), [("en", "It holds", "grams"), ("es", "Tiene", "gramos")]
)
def test_every_number_word(language: str, before: str, after: str) -> None:
    table = (TABLES / f"number-words.{language}.txt").read_text("utf-8").splitlines()
    assert len(table) == 10_000
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


@pytest.mark.parametrize("language", ["en", "es"])
def test_another_reader_reads_the_same(language: str) -> None:
    other = pytest.importorskip("text_to_num", reason="text2num has no file for Intel Macs")
    table = (TABLES / f"number-words.{language}.txt").read_text("utf-8").splitlines()
    for line in table:
        number, _, words = line.partition(" ")
        assert other.text2num(words.replace(",", ""), language) == int(number), words


@pytest.mark.parametrize("case", cases("numbers-said", "numbers"), ids=str)
def test_numbers_in_a_sentence(case: Case) -> None:
    found = language_of(case.language).numbers_in(case.text)
    assert [f"{one.value:f}" for one in found] == case.expected.split()


def test_every_language_with_number_words_has_cases() -> None:
    known = {one.tag for one in KNOWN.values() if one.number_words.begin}
    assert set(languages("numbers-said")) == set(languages("number-words")) == known
