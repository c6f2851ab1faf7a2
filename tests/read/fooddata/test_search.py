"""Finding foods by words, however they are typed."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.label import label_value
from generator.model.measure import Measure
from generator.read.fooddata import record_search
from generator.read.fooddata.importing import import_foods
from generator.read.fooddata.index import opened_index
from generator.read.fooddata.record_search import Bounds, find_records
from generator.read.fooddata.search import find_in_library
from generator.read.fooddata.words import words_of
from generator.read.library import read_library
from tests.read.fooddata.official_zip import small_zip

SITE = Path(__file__).parents[3]
FOODS = read_library(SITE).foods


@pytest.fixture(scope="module")
def root(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("index")
    import_foods(folder, small_zip(folder / "a.zip"), lambda _read, _total: None)
    return folder


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("black beans", [101]),
        ("BLACK bean", [101]),
        ("bla bea", [101]),
        ('"home"', [102]),
        ("lentil OR beans", []),
        ("beans -lentil", []),
        ("NEAR(black beans)", []),
        ("description: beans", []),
        ('"', []),
        ("", []),
        ("*", []),
        ("'; DROP TABLE food; --", []),
    ],
)
def test_signs_and_operators_are_plain_words(root: Path, typed: str, found: list[int]) -> None:
    with opened_index(root) as index:
        assert [one.fdc for _, one in find_records(index, typed, 5).found] == found


@given(st.text(max_size=60))
def test_whatever_is_typed_never_fails(root: Path, typed: str) -> None:
    with opened_index(root) as index:
        find_records(index, typed, 5)
    find_in_library(FOODS, typed)


@pytest.mark.parametrize(
    ("typed", "first"),
    [
        ("lentil soup", "soup-lentil-ham-canned"),
        ("manzana", "apple-raw"),
        ("pan de banana", "banana-bread"),
        ("pina", "pineapple-raw"),
        ("apple-raw", "apple-raw"),
    ],
)
def test_the_library_is_found_in_both_languages_and_without_accents(typed: str, first: str) -> None:
    assert first in [food.id for _, food in find_in_library(FOODS, typed)[:5]]


def test_accents_fall_off() -> None:
    assert words_of("Piña colada, 1/2 taza!") == ("pina", "colada", "1", "2", "taza")


def test_where_too_many_fit_the_words_it_is_said(
    root: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A value is looked for among the first; whether those were all is known."""
    bounds = Bounds(Measure.ENERGY, Decimal(1), None, lambda _: True)
    with opened_index(root) as index:
        assert find_records(index, "beans", 5, bounds).whole
        monkeypatch.setattr(record_search, "LOOKED", 1)
        assert not find_records(index, "beans", 5, bounds).whole


@given(
    amount=st.integers(0, 3_000),
    size=st.integers(1, 400),
    measure=st.sampled_from(list(Measure)),
)
def test_a_quick_look_at_a_label_passes_over_nothing_that_suits(
    amount: int, size: int, measure: Measure
) -> None:
    """What is shown is rounded, so the quick look is a little wider than what is asked."""
    shown = label_value(measure, Fraction(amount * size, 100)).value
    bounds = Bounds(measure, shown, shown, lambda _: True)
    nutrient = measure.entry.nutrients[0]
    assert bounds.may_suit(str(size), f"1:2 {nutrient}:{amount}")
    assert not bounds.may_suit(str(size), f"1:2 {nutrient}:{amount + 20_000}")
