"""Words and numbers come out as each language writes them.

Number forms: Unicode CLDR, as told in the project's reference sheet; en_US, es_MX and es_US write
1,234.5, and es_ES writes 1234,5 (minimum grouping digits). Common practice elsewhere, no source.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.model.measure import Measure
from generator.model.words import Words
from generator.present.words.say import Say, as_decimal, digits
from tests.project import library

TEXTS = {
    "list_and": "{most} and {last}",
    "plain": "Just words, 100 %",
    "named": "{side} holds {gap}",
    "minutes": {"one": "{n} minute", "other": "{n} minutes"},
}


def say(language: str = "en") -> Say:
    return Say(Words(language, TEXTS))


@pytest.mark.parametrize(
    ("language", "number", "shown"),
    [
        ("en", "1420", "1,420"),
        ("en", "2.5", "2.5"),
        ("en", "0", "0"),
        ("en", "1234567", "1,234,567"),
        ("es-MX", "1234.5", "1,234.5"),
        ("es-US", "1420", "1,420"),
        ("es-ES", "1234.5", "1234,5"),
        ("es-ES", "12345", "12.345"),
        ("es", "1420", "1420"),
        ("es", "14200.5", "14.200,5"),
    ],
)
def test_numbers(language: str, number: str, shown: str) -> None:
    assert say(language).number(Decimal(number)) == shown


def test_a_number_and_its_unit_stay_on_one_line() -> None:
    assert say().quantity(Decimal(1420), Measure.SODIUM) == "1,420\N{NO-BREAK SPACE}mg"


@pytest.mark.parametrize(
    ("parts", "said"),
    [((), ""), (("a",), "a"), (("a", "b"), "a and b"), (("a", "b", "c"), "a, b and c")],
)
def test_lists(parts: tuple[str, ...], said: str) -> None:
    assert say().listed(parts) == said


@pytest.mark.parametrize(
    ("language", "name", "inside"),
    [
        ("en", "Apple", "apple"),
        ("en", "French toast", "French toast"),
        ("en", "Hash browns", "hash browns"),
        ("es", "Ñame cocido", "ñame cocido"),
        ("es", "Coles de Bruselas", "coles de Bruselas"),
    ],
)
def test_a_food_inside_a_sentence(language: str, name: str, inside: str) -> None:
    assert Say(library().words[language]).inside(name) == inside


@pytest.mark.parametrize(("n", "said"), [(0, "0 minutes"), (1, "1 minute"), (2, "2 minutes")])
def test_plurals(n: int, said: str) -> None:
    assert say()("minutes", n=n) == said


def test_values_fill_their_places_and_nothing_else() -> None:
    assert say()("named", side="{gap}", gap="90 kcal") == "{gap} holds 90 kcal"
    assert say()("plain") == "Just words, 100 %"


@pytest.mark.parametrize(("key", "values"), [("nothing", {}), ("named", {"side": "A"})])
def test_what_is_missing_is_a_bug_and_raised(key: str, values: dict[str, str]) -> None:
    with pytest.raises(KeyError):
        say()(key, **values)


@pytest.mark.parametrize(
    ("language", "named"),
    [("es", "Español"), ("fr", "Français"), ("pt-BR", "Português (Brasil)"), ("qq", "qq")],
)
def test_a_language_is_called_what_it_calls_itself(language: str, named: str) -> None:
    """Spanish by our own words, the others by CLDR (its names for themselves, from memory)."""
    assert Say(library().words["en"]).language_name(language) == named


@given(st.decimals(0, 99_999, places=1))
def test_digits_are_the_number_again(value: Decimal) -> None:
    assert Decimal(digits(value)) == value
    assert "E" not in digits(value)


@given(st.fractions(0, 10_000))
def test_an_exact_value_for_reading_is_no_further_than_half_a_hundredth(exact: Fraction) -> None:
    assert abs(Fraction(as_decimal(exact)) - exact) <= Fraction(1, 200)


def test_a_tie_goes_up_as_it_does_everywhere_else() -> None:
    """Half goes up: generator/compute/label.py; Python's own round would go to the even digit."""
    assert as_decimal(Fraction(85, 2), 0) == 43
    assert as_decimal(Fraction(5, 1000)) == Decimal("0.01")


def test_every_english_text_can_be_filled() -> None:
    words = library().words["en"]
    for key, text in words.texts.items():
        forms = [text] if isinstance(text, str) else list(text.values())
        for form in forms:
            assert form.strip(), key
