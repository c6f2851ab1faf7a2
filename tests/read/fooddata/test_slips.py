"""One slip of the finger in a word: the food is found all the same, after those that are spelled so."""

from __future__ import annotations

import string
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.read.fooddata.importing import import_foods
from generator.read.fooddata.index import opened_index
from generator.read.fooddata.record_search import find_records
from generator.read.fooddata.search import Fit, find_in_library
from generator.read.fooddata.words import slips
from tests.project import library
from tests.read.fooddata.official_zip import FOOD, small_zip

FOODS = library().foods
WORD = "chickpea"
LETTERS = st.sampled_from(string.ascii_lowercase)
KINDS = ("left out", "put in", "another", "two changed places")


@pytest.fixture(scope="module")
def root(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("slips")
    rows = (
        *FOOD,
        ("103", "sr_legacy_food", "Broccoli, raw", "11", "2019-04-01"),
        ("104", "sr_legacy_food", "Broccoli soup", "11", "2019-04-01"),
        ("105", "sr_legacy_food", "Brocade cake", "11", "2019-04-01"),
    )
    import_foods(folder, small_zip(folder / "a.zip", {"food.csv": rows}), lambda _a, _b: None)
    return folder


def found(root: Path, typed: str) -> list[tuple[Fit, int]]:
    with opened_index(root) as index:
        return [(fit, one.fdc) for fit, one in find_records(index, typed, 9).found]


@st.composite
def slipped(draw: st.DrawFn) -> str:
    """The word with one slip, made by hand here and not by the program."""
    at = draw(st.integers(0, len(WORD) - 1))
    head, tail = WORD[:at], WORD[at:]
    match draw(st.sampled_from(KINDS)):
        case "left out":
            return head + tail[1:]
        case "put in":
            return head + draw(LETTERS) + tail
        case "another":
            return head + draw(LETTERS) + tail[1:]
        case _:
            return head + tail[1:2] + tail[0] + tail[2:]


@given(slipped())
def test_any_one_slip_still_finds_the_food(typed: str) -> None:
    ids = {food.id for _, food in find_in_library(FOODS, typed)}
    assert any("chickpea" in id_ for id_ in ids), typed


@given(slipped())
def test_a_slip_leads_back(typed: str) -> None:
    assert typed == WORD or WORD in slips(typed)
    assert typed == WORD or typed in slips(WORD)


@pytest.mark.parametrize(
    ("typed", "fdc"),
    [
        ("brocoli", [103, 104]),
        ("brocccoli", [103, 104]),
        ("brcocoli raw", [103]),
        ("broccoil souo", [104]),
        ("brokkoli", []),
        ("brocolli", []),
        ("lentl", [102]),
        ("bena", [101]),
        ("ben", []),
    ],
)
def test_each_word_may_have_one_slip_when_it_has_four_letters(
    root: Path, typed: str, fdc: list[int]
) -> None:
    assert [one for _, one in found(root, typed)] == fdc


def test_exact_comes_first_then_words_then_beginnings(root: Path) -> None:
    assert found(root, "broccoli soup")[0] == (Fit.EXACT, 104)
    assert found(root, "soup") == [(Fit.WORDS, 104), (Fit.WORDS, 102)]
    assert found(root, "broc") == [(Fit.BEGINNINGS, fdc) for fdc in (105, 103, 104)]


def test_a_word_that_is_there_brings_no_neighbors() -> None:
    """Whoever looks for pears is not shown peas."""
    fits = {fit for fit, _ in find_in_library(FOODS, "pears")}
    assert Fit.SLIP not in fits
    assert fits


def test_spanish_slips_too() -> None:
    assert "apple-raw" in {food.id for _, food in find_in_library(FOODS, "mansana")}
