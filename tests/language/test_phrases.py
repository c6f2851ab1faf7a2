"""A number is heard however it is said: right ones are let through, wrong ones are told.

What each phrase means is common practice, no source; text2num, a library of others, is asked too.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from generator.check.claims.read import claims_of
from generator.language import language_of
from tests.said.asked import can_be_shown, of_phrase, other_than
from tests.said.sets import LANGUAGES, PHRASES, Phrase, phrases

EVERY = [phrase for name in PHRASES for tag in LANGUAGES for phrase in phrases(name, tag)]


@pytest.mark.parametrize("phrase", EVERY, ids=str)
def test_a_phrase_is_one_number(phrase: Phrase) -> None:
    (found,) = language_of(phrase.language).numbers_in(phrase.sentence)
    assert found.value == phrase.value


@pytest.mark.parametrize("phrase", [one for one in EVERY if can_be_shown(one)], ids=str)
def test_a_right_number_is_let_through_and_a_wrong_one_is_told(phrase: Phrase) -> None:
    assert of_phrase(phrase, phrase.value) == []
    assert len(of_phrase(phrase, other_than(phrase))) == 1


def test_another_reader_hears_the_same_wherever_it_hears_a_number() -> None:
    other = pytest.importorskip("text_to_num", reason="text2num has no file for Intel Macs")
    agreed = 0
    for phrase in EVERY:
        try:
            heard = other.text2num(phrase.text.replace("-", " "), phrase.language)
        except ValueError:
            continue
        assert heard == phrase.value, phrase
        agreed += 1
    assert agreed > 50


@pytest.mark.parametrize(
    ("text", "heard"),
    [
        ("1 1/3 grams", Decimal(4) / Decimal(3)),
        ("2⅔ g", Decimal(8) / Decimal(3)),
        ("a gram and a half", Decimal("1.5")),
        ("6¼", Decimal("6.25")),
    ],
)
def test_a_part_is_as_exact_as_a_decimal_can_be(text: str, heard: Decimal) -> None:
    (found,) = language_of("en").numbers_in(text)
    assert found.value == heard


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(
    "text",
    [
        "1/0",
        "3/٠",
        "1/ 1/",
        "/ 1 /2",
        "9" * 5000,
        f"1/{'9' * 5000}",
        "1 " * 4000,
        "三 Ⅷ ² ½½",
        "½" * 900,
    ],
)
def test_what_is_no_number_of_a_lesson_does_no_harm(language: str, text: str) -> None:
    assert all(one.value >= 0 for one in language_of(language).numbers_in(text))


def test_a_claim_of_endless_digits_is_no_claim() -> None:
    text = f"It holds {'9' * 4500} more than the cake, and {'9' * 4500} times as much."
    assert not list(claims_of(text, language_of("en").claims))
