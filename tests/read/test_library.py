"""Each mistake in `site_data/` gives its sentences at the right place, and none is lost."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from generator.problems import LessonError, Problem
from generator.read.library import read_library
from tests.project import library, site

APPLE = "  apple-raw:\n"
FOODS, MOVES, SITE, EN, ES, FR = (
    f"site_data/{name}.yaml"
    for name in ("foods", "moves", "site", "words/en", "words/es", "words/fr")
)

MISTAKES = [
    ("the same id twice", FOODS, "  arepa:\n", "  amaranth-cooked:\n", "`amaranth-cooked` is written twice"),
    ("the same record twice", FOODS, "fdc: 168070", "fdc: 170683", "`arepa` and `amaranth-cooked` are the same record 170683"),
    ("negative grams", FOODS, "grams: 246,", "grams: -246,", "`grams` is `-246`, which is too small"),
    ("no grams", FOODS, "grams: 246,", "grams: 0,", "`grams` is `0`, which is too small"),
    ("grams without end", FOODS, "grams: 246,", "grams: .inf,", "`grams` must be a number"),
    ("energy that is no number", FOODS, "energy: 102,", "energy: nan,", "`energy` must be a number"),
    ("energy below nothing", FOODS, "energy: 102,", "energy: -1,", "`energy` is `-1`, which is too small"),
    ("energy past all", FOODS, "energy: 102,", "energy: 1e400,", "`energy` is `1e400`, which is too large"),
    ("a value left out", FOODS, "energy: 102, ", "", "`energy:` is missing"),
    ("a figure misspelled", FOODS, "calcium: 47", "calcum: 47", "`calcum` is not a key"),
    ("a figure left empty", FOODS, "calcium: 47", "calcium: ~", "`calcium` is empty"),
    ("a food without an English name", FOODS, "{en: Amaranth, es: Amaranto cocido}", "{es: Amaranto cocido}", "need an English name"),
    ("a portion without English", FOODS, "{en: 1 cup, es: 1 taza}", "{es: 1 taza}", "need an English amount"),
    ("a unit without several", FOODS, "{en: 1 cup, es: 1 taza}, grams: 246", "{en: 1 cup, es: 1 taza}, units: {es: {one: taza}}, grams: 246", "need a word for one and for several"),
    ("a portion without a number", FOODS, "{en: 1 cup,", "{en: cup,", "need an English amount"),
    ("a portion of none", FOODS, "{en: 1 cup,", "{en: 0 cup,", "need an English amount"),
    ("an allergen misspelled", FOODS, "allergens: [wheat]", "allergens: [weat]", "cannot be `weat`"),
    ("a key nobody knows", FOODS, "    group: grains", "    groop: grains", "`groop` is not a key"),
    ("a source left out", FOODS, "source:\n", "sauce:\n", "`source:` is missing"),
    ("a cap that falls", MOVES, "caps: {K-2: 30, 3-5: 50, 6-8: 60}", "caps: {K-2: 30, 3-5: 5, 6-8: 60}", "fall from one grade band"),
    ("a move without English", MOVES, "      en:\n", "      fr:\n", "lack English"),
    ("a pose short of a leg", MOVES, "legs: [[82, -4], [0, 0]]", "legs: [[82, -4]]", "too few entries"),
    ("an address without its slash", SITE, "larkmead.example/", "larkmead.example", "`address` cannot be"),
    ("an address of one page", SITE, "larkmead.example/", "larkmead.example/?page=/", "`address` cannot be"),
    ("a language that is none", SITE, "languages: [en", "languages: [../en", "`../en` is no language tag"),
    ("a programme without a name", SITE, "programme: Larkmead Village Kitchen", "programme:", "`programme` is empty"),
    ("an English text left empty", EN, "list_and: \"{most} and {last}\"", "list_and:", "`list_and` must be a text"),
    ("a brace not closed", EN, '"{most} and {last}"', '"{most} and {last"', "a brace in `list_and`"),
    ("a brace without a name", EN, '"{most} and {last}"', '"{} and {last}"', "a brace in `list_and`"),
    ("a locale nobody knows", EN, "locale: en-US", "locale: qq", "numbers are written in `qq`"),
    ("a direction", EN, "direction: ltr", "direction: up", "not written in the direction `up`"),
    ("plural forms without the common one", EN, 'minutes: {one: "{n} minute", other:', 'minutes: {one: "{n} minute", others:', "lacks `other`"),
]  # fmt: skip


def wrong(root: Path) -> tuple[Problem, ...]:
    with pytest.raises(LessonError) as caught:
        read_library(root)
    assert caught.value.problems
    return caught.value.problems


@pytest.mark.parametrize(
    ("path", "old", "new", "what"), [pytest.param(*case[1:], id=case[0]) for case in MISTAKES]
)
def test_one_mistake(tmp_path: Path, path: str, old: str, new: str, what: str) -> None:
    file = site(tmp_path) / path
    text = file.read_text(encoding="utf-8")
    assert old in text
    file.write_text(text.replace(old, new, 1), encoding="utf-8")
    found = wrong(tmp_path)
    told = [problem for problem in found if what in problem.what]
    assert told, list(map(str, found))
    assert told[0].place.path == path
    changed = text[: text.index(old)].count("\n") + 1
    assert 1 <= told[0].place.line <= changed + old.count("\n") + 3


@pytest.mark.parametrize("written", ["", " [rtl]"])
def test_a_direction_that_is_no_text_is_told_once(tmp_path: Path, written: str) -> None:
    file = site(tmp_path) / EN
    text = file.read_text(encoding="utf-8")
    file.write_text(re.sub(r"direction: .*", f"direction:{written}", text), encoding="utf-8")
    assert [problem.what for problem in wrong(tmp_path)] == ["`direction` must be a text"]


@pytest.mark.parametrize("path", [FOODS, MOVES, SITE, EN])
@pytest.mark.parametrize("text", ["", "~\n", "- a\n- b\n", "words\n", "a: [\n"])
def test_a_file_of_something_else(tmp_path: Path, path: str, text: str) -> None:
    (site(tmp_path) / path).write_text(text, encoding="utf-8")
    assert path in {problem.place.path for problem in wrong(tmp_path)}


def test_who_makes_the_site_is_said_by_nobody_else(tmp_path: Path) -> None:
    (site(tmp_path) / SITE).unlink()
    assert {problem.place.path for problem in wrong(tmp_path)} == {SITE}


@pytest.mark.parametrize("path", [FOODS, MOVES, EN, ES])
def test_of_a_file_that_is_missing_the_programs_own_serves(tmp_path: Path, path: str) -> None:
    (site(tmp_path) / path).unlink()
    ours, whole = read_library(tmp_path), library()
    assert (ours.foods, ours.moves, ours.words) == (whole.foods, whole.moves, whole.words)


def test_mistakes_of_several_files_are_told_together(tmp_path: Path) -> None:
    for path in (FOODS, MOVES, SITE):
        (site(tmp_path) / path).write_text("", encoding="utf-8")
    for path in (FOODS, MOVES, SITE):
        (tmp_path / path).write_text("", encoding="utf-8")
    assert {problem.place.path for problem in wrong(tmp_path)} >= {FOODS, MOVES, SITE}


def two_languages(root: Path, old: str, new: str) -> tuple[Problem, ...]:
    """A site in English and in a language of its own, whose words are the English ones with one change."""
    site(root)
    (root / SITE).write_text("programme: Larkmead\nlanguages: [en, fr]\n", encoding="utf-8")
    english = (root / EN).read_text(encoding="utf-8")
    assert old in english
    (root / FR).write_text(english.replace(old, new, 1), encoding="utf-8")
    return wrong(root)


LIST = 'list_and: "{most} and {last}"\n'


@pytest.mark.parametrize(
    ("french", "at", "what"),
    [
        ("", "3:1", "the text `list_and` is missing"),
        ('list_and: "{most}"\n', "5:1", "`list_and` fills other places"),
        ('list_and: "{tout} et {last}"\n', "5:1", "`list_and` fills other places"),
        (LIST + "list_end: x\n", "6:1", "`list_end` is no text of the site"),
        ('list_and: "{most} {last"\n', "5:1", "a brace in `list_and`"),
    ],
)
def test_a_translation_is_held_against_english(
    tmp_path: Path, french: str, at: str, what: str
) -> None:
    found = two_languages(tmp_path, LIST, french)
    told = [problem for problem in found if what in problem.what]
    assert [str(problem.place) for problem in told] == [f"{FR}:{at}"], list(map(str, found))


def test_the_library_of_the_site_is_whole() -> None:
    library = read_library(Path(__file__).parents[2])
    assert len(library.foods) >= 500
    assert all(name == food.id for name, food in library.foods.items())
