"""A site's own foods, moves and words lie over the program's, and who replaced what is told."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from generator.check.names import names_complete
from generator.check.replaced import replaced_entries
from generator.compute.lacking_names import LackingName
from generator.model.library import Library
from generator.model.places import Path as DataPath
from generator.problems import LessonError
from generator.read.library import read_library
from tests.project import library

WHOLE_ENTRY = """\
    names: {en: %s}
    group: fruit
    fdc: %d
    record: A record of one's own
    per_100g: {energy: 50, protein: 1, fat: 0, carbohydrate: 12, sugars: 9, fiber: 2, saturated_fat: 0, sodium: 1}
    portions:
      - {names: {en: 1 cup}, grams: 140, record: 1 cup}
"""


def laid(root: Path, **files: str) -> Library:
    """The library of a site that has nothing but these files."""
    (root / "site_data/words").mkdir(parents=True)
    (root / "site_data/site.yaml").write_text("programme: Hillside\nlanguages: [en]\n", "utf-8")
    for name, text in files.items():
        (root / "site_data" / f"{name.replace('_', '/')}.yaml").write_text(text, "utf-8")
    return read_library(root)


def told(held: Library) -> list[str]:
    return [str(problem) for problem in replaced_entries(held)]


def test_without_files_of_its_own_a_site_has_the_programs(tmp_path: Path) -> None:
    held = laid(tmp_path)
    assert held.foods == library().foods
    assert held.moves == library().moves
    assert held.words["en"] == library().words["en"]
    assert told(held) == []


def test_a_food_is_added_with_the_programs_below_it(tmp_path: Path) -> None:
    held = laid(tmp_path, foods="foods:\n  cloudberry:\n" + WHOLE_ENTRY % ("Cloudberry", 9_999_999))
    assert held.foods.keys() == library().foods.keys() | {"cloudberry"}
    assert held.foods["cloudberry"].release == library().foods["apple-raw"].release
    assert told(held) == []


def test_a_food_with_its_record_takes_the_place_of_the_programs_whole(tmp_path: Path) -> None:
    held = laid(tmp_path, foods="foods:\n  apple-raw:\n" + WHOLE_ENTRY % ("Our apple", 9_999_999))
    apple = held.foods["apple-raw"]
    assert (apple.entry.names, len(apple.entry.portions)) == ({"en": "Our apple"}, 1)
    assert len(held.foods) == len(library().foods)
    assert told(held) == [
        "site_data/foods.yaml:2:3: `apple-raw` stands here in the place of the program's own: an update of the program changes nothing of it; take it out to have the program's again"
    ]


def test_a_food_without_a_record_changes_what_it_says_and_no_more(tmp_path: Path) -> None:
    text = "foods:\n  apple-raw:\n    names: {so: Tufaax}\n    portions:\n      - names: {en: 1 medium, so: 1 dhexdhexaad}\n"
    apple, ours = laid(tmp_path, foods=text).foods["apple-raw"].entry, library().foods["apple-raw"]
    assert apple.names == {**ours.entry.names, "so": "Tufaax"}
    assert [one.grams for one in apple.portions] == [one.grams for one in ours.entry.portions]
    named = {one.names["en"]: one.names.get("so") for one in apple.portions}
    assert named["1 medium"] == "1 dhexdhexaad"
    assert len(named) > 1


def test_a_portion_is_added_to_a_food_of_the_programs(tmp_path: Path) -> None:
    text = "foods:\n  apple-raw:\n    portions:\n      - {names: {en: 1 bowl}, grams: 90, record: weighed here}\n"
    portions = laid(tmp_path, foods=text).foods["apple-raw"].entry.portions
    assert [one.grams for one in portions][-1] == Decimal(90)
    assert len(portions) == len(library().foods["apple-raw"].entry.portions) + 1


def test_a_mistake_in_an_added_portion_is_told_where_it_stands(tmp_path: Path) -> None:
    text = "foods:\n  apple-raw:\n    portions:\n      - {names: {en: 1 bowl}, grams: -9, record: here}\n"
    with pytest.raises(LessonError) as caught:
        laid(tmp_path, foods=text)
    assert str(caught.value).startswith("site_data/foods.yaml:4:38: `grams` is `-9`")


def test_a_source_of_ones_own_is_that_of_ones_own_records(tmp_path: Path) -> None:
    text = "source: {name: Foundation Foods, release: 2026-04, licence: public domain, url: https://fdc.nal.usda.gov}\n"
    text += "foods:\n  cloudberry:\n" + WHOLE_ENTRY % ("Cloudberry", 9_999_999)
    held = laid(tmp_path, foods=text)
    assert held.foods["cloudberry"].release == "Foundation Foods, 2026-04"
    assert held.foods["apple-raw"].release == library().foods["apple-raw"].release


def test_the_same_record_under_two_names_is_told_at_ones_own(tmp_path: Path) -> None:
    fdc = library().foods["apple-raw"].entry.fdc
    with pytest.raises(LessonError) as caught:
        laid(tmp_path, foods="foods:\n  my-apple:\n" + WHOLE_ENTRY % ("Apple", fdc))
    assert str(caught.value).startswith(
        f"site_data/foods.yaml:5:10: `my-apple` and `apple-raw` are the same record {fdc}"
    )


def test_a_move_changes_what_it_says_and_no_more(tmp_path: Path) -> None:
    held = laid(tmp_path, moves="moves:\n  march: {pace: 30}\n")
    march, ours = held.moves["march"], library().moves["march"]
    assert march.pace == 30
    assert march.texts == ours.texts
    assert held.moves.keys() == library().moves.keys()
    assert told(held)[0].startswith("site_data/moves.yaml:2:3: `march` stands here")


def test_words_lie_over_by_their_key(tmp_path: Path) -> None:
    held = laid(tmp_path, words_en='list_and: "{most} & {last}"\n')
    assert held.words["en"].plain("list_and") == "{most} & {last}"
    assert held.words["en"].texts.keys() == library().words["en"].texts.keys()
    assert told(held)[0].startswith("site_data/words/en.yaml:1:1: `list_and` stands here")


def test_units_of_a_site_stand_beside_the_programs(tmp_path: Path) -> None:
    held = laid(tmp_path, words_en="units: {loaf: loaves, slice: slabs}\n")
    units = held.words["en"].units
    assert units["loaf"] == {"one": "loaf", "other": "loaves"}
    assert units["slice"]["other"] == "slabs"
    assert units.keys() == library().words["en"].units.keys() | {"loaf"}
    assert held.words["en"].texts == library().words["en"].texts


@pytest.mark.parametrize(
    ("name", "text", "what"),
    [
        ("words_en", "list_end: and\n", "1:1: `list_end` is no text of the site"),
        ("words_en", "units: cup\n", "1:1: `units` must be a table"),
        ("words_en", "units: {cup: 2}\n", "1:9: what several `cup` are called is missing"),
        ("words_en", "units: {cup: {few: x}}\n", "1:9: what several `cup` are called is missing"),
        (
            "words_en",
            "units: {cup: {other: [x]}}\n",
            "1:9: what several `cup` are called is missing",
        ),
        ("foods", "fods:\n  kiwi: {}\n", "1:1: `fods` is no key of this file"),
        ("foods", "foods:\n", "1:7: `foods:` must hold entries"),
        ("moves", "moves: [march]\n", "1:8: `moves:` must hold entries"),
        ("foods", "# nothing yet\n", "1:1: the file is empty"),
    ],
)
def test_what_nobody_would_read_is_told(tmp_path: Path, name: str, text: str, what: str) -> None:
    with pytest.raises(LessonError) as caught:
        laid(tmp_path, **{name: text})
    path = f"site_data/{name.replace('_', '/')}.yaml"
    assert f"{path}:{what}" in str(caught.value), str(caught.value)


def test_a_whole_library_of_ones_own_has_nothing_below_it(tmp_path: Path) -> None:
    text = "whole: true\nsource: {name: Ours, release: 2026-04, licence: ours, url: https://fdc.nal.usda.gov}\n"
    text += "foods:\n  cloudberry:\n" + WHOLE_ENTRY % ("Cloudberry", 9_999_999)
    assert laid(tmp_path, foods=text).foods.keys() == {"cloudberry"}


@pytest.mark.parametrize(
    ("at", "original", "lines"),
    [
        (("foods", "apple-raw", "names"), "Apple", "`apple-raw: {names: {so: …}}` below `foods:`"),
        (
            ("foods", "apple-raw", "portions", 0, "names"),
            "1 medium",
            "`apple-raw: {portions: [{names: {en: 1 medium, so: …}}]}` below `foods:`",
        ),
        (("moves", "march", "texts"), "March", "`march: {texts: {so: {name: …"),
    ],
)
def test_the_way_out_of_a_missing_name_is_ones_own_file(
    tmp_path: Path, at: DataPath, original: str, lines: str
) -> None:
    """The file that the name is missing in is the program's, and nobody is sent there."""
    (problem,) = names_complete([LackingName("so", at, original)], laid(tmp_path).places)
    assert problem.place.path == f"the program's {at[0]}.yaml"
    assert lines in problem.hint
    assert f"in your own site_data/{at[0]}.yaml" in problem.hint
