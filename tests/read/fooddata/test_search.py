"""Finding foods by words, however they are typed."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.read.fooddata.importing import import_foods
from generator.read.fooddata.index import opened_index
from generator.read.fooddata.record_search import find_records
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
