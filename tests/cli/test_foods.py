"""The food commands, from a download to a row of a lesson."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from generator.cli.commands import commands
from generator.model.food import Food
from generator.read.library import read_library
from tests.read.fooddata.official_zip import FOOD, FOOD_NUTRIENT, FOOD_PORTION, small_zip

SITE = Path(__file__).parents[2]
FILE = "site_data/foods.yaml"


@pytest.fixture
def root(tmp_path: Path) -> Path:
    shutil.copytree(SITE / "site_data", tmp_path / "site_data")
    return tmp_path


@pytest.fixture
def filled(root: Path) -> Path:
    """A site with an index of three records, one of them with signs YAML has a use for."""
    changed = {
        "food.csv": (
            *FOOD,
            ("103", "sr_legacy_food", 'Drink: "pear #1", {odd}, [new]', "14", "2019-04-01"),
        ),
        "food_portion.csv": (
            *FOOD_PORTION,
            ("4", "103", "1", "0.5", "9999", "", 'bottle: 8" #2, {tall}', "240"),
            ("5", "103", "2", "1", "9999", "", "bird", "5002"),
        ),
        "food_nutrient.csv": (*FOOD_NUTRIENT, ("8", "103", "1008", "40.10", "1")),
    }
    run(root, "import", str(small_zip(root / "a.zip", changed)))
    return root


def run(root: Path, *words: str, code: int = 0) -> Result:
    result = CliRunner().invoke(commands, ["foods", *words, "--root", str(root)])
    assert result.exit_code == code, result.output
    return result


def test_a_site_with_the_programs_library_adds_to_a_file_of_its_own(filled: Path) -> None:
    """It is begun where there is none; what an editor completes is kept in step."""
    (filled / FILE).unlink()
    schema = filled / "site_data/lesson.schema.json"
    said = run(filled, "refresh").output
    assert "No figures changed" in said
    assert not (filled / FILE).exists(), "nothing of the program's library is hers to refresh"
    added = run(filled, "add", "103", "--id", "pear-drink").output
    assert "`pear-drink`" in added
    text = (filled / FILE).read_text("utf-8")
    assert text.startswith("# Foods of this site's own")
    assert "\nfoods:\n" in text
    assert food(filled, "pear-drink").entry.fdc == 103
    assert food(filled, "apple-raw").id == "apple-raw"
    assert '"pear-drink"' in schema.read_text("utf-8")


def food(root: Path, id_: str) -> Food:
    return read_library(root).foods[id_]


def test_whole_words_come_before_words_that_only_begin_so(root: Path) -> None:
    said = run(root, "find", "egg").output
    assert said.index("egg-boiled ") < said.index("eggnog ")


def test_lentil_soup_is_two_commands_from_a_row_even_without_an_index(root: Path) -> None:
    said = run(root, "find", "lentil", "soup").output
    assert re.search(
        r"^soup-lentil-ham-canned +Lentil soup with ham +1 cup +140$", said, re.MULTILINE
    )
    assert "write {food: soup-lentil-ham-canned, amount: 1 cup}" in said


def test_nothing_found_without_an_index_says_how_to_get_one(root: Path) -> None:
    assert "python3 generator foods import FILE.zip" in run(root, "find", "zzzz").output


def test_what_was_imported_and_left_out_is_said(root: Path) -> None:
    said = run(root, "import", str(small_zip(root / "a [b] {c}.zip"))).output
    assert "SR Legacy, published 2019-04-01: 2 foods, 5 figures, 2 portions." in said
    assert "Left out: 1 portion with an amount or a weight of 0." in said


def test_a_record_is_found_and_the_next_command_named(filled: Path) -> None:
    said = run(filled, "find", "beans", "cooked").output
    assert re.search(r"^101 +Beans, black, cooked +1 cup +230$", said, re.MULTILINE)
    assert "python3 generator foods add 101" in said


def test_a_record_becomes_a_food_of_its_group_and_the_rest_stays(filled: Path) -> None:
    before = (filled / FILE).read_text("utf-8")
    said = run(filled, "add", "101", "--id", "beans-odd", "--name", "Odd beans").output
    added = food(filled, "beans-odd")
    assert added.entry.names == {"en": "Odd beans"}
    assert added.entry.group == "protein"
    assert str(added.entry.per_100g.protein) == "8.86"
    assert added.entry.per_100g.sugars == "no value"
    assert [one.record for one in added.entry.portions] == ["1 cup", "0.5 cup, mashed"]
    assert added.entry.portions[1].names["en"] == "1/2 cup, mashed"
    after = (filled / FILE).read_text("utf-8")
    start = after.index("  beans-odd:\n")
    end = after.index("  beef-crumbles-80:\n", start)
    assert after[:start] + after[end:] == before
    assert "write {food: beans-odd, amount: 1 cup}" in said


def test_an_added_amount_can_be_weighed(filled: Path) -> None:
    run(filled, "add", "101", "--id", "beans-odd")
    serving = food(filled, "beans-odd").serving("1/2 cup, mashed")
    assert serving is not None
    assert serving.grams == 90.5


def test_signs_of_yaml_in_a_record_are_written_as_words(filled: Path) -> None:
    run(filled, "add", "103", "--id", "pear-drink", "--group", "drinks")
    added = food(filled, "pear-drink")
    assert added.entry.record == 'Drink: "pear #1", {odd}, [new]'
    assert added.entry.portions[0].record == '0.5 bottle: 8" #2, {tall}'
    assert len(added.entry.portions) == 1  # a portion of 5,002 g is no amount in a lesson
    assert added.entry.drink


def test_a_record_without_a_portion_is_weighed_in_grams(filled: Path) -> None:
    run(filled, "add", "102", "--id", "odd-soup")
    assert food(filled, "odd-soup").entry.portions[0].record == "100 g"
    assert "No figures changed" in run(filled, "refresh").output


def test_another_kind_of_food_names_its_own_release(root: Path) -> None:
    rows = (FOOD[0], ("201", "foundation_food", "Beans, odd", "16", "2023-10-26"))
    figures = (FOOD_NUTRIENT[0], ("1", "201", "2047", "332", "1"))
    changed = {"food.csv": rows, "food_nutrient.csv": figures, "food_portion.csv": FOOD_PORTION[:1]}
    run(root, "import", str(small_zip(root / "b.zip", changed)))
    run(root, "add", "201")
    assert food(root, "beans-odd").release == "USDA FoodData Central, Foundation, 2023-10-26"


def test_records_of_several_releases_say_which(root: Path) -> None:
    rows = (*FOOD, ("201", "foundation_food", "Beans, black, odd", "16", "2023-10-26"))
    run(root, "import", str(small_zip(root / "b.zip", {"food.csv": rows})))
    said = run(root, "find", "beans", "black").output
    one, other = "SR Legacy, 2019-04-01", "Foundation, 2023-10-26"
    source = "USDA FoodData Central, "
    assert f"The records: {source}{other}; {source}{one}." in said


def test_what_no_record_fits_is_told_with_a_way_on(filled: Path) -> None:
    assert "Nothing fits “zzzz”. Try one word" in run(filled, "find", "zzzz").output


def test_refresh_says_what_it_could_not_compare(root: Path) -> None:
    rows = (FOOD[0], ("201", "foundation_food", "Beans, odd", "16", "2023-10-26"))
    changed = {"food.csv": rows, "food_nutrient.csv": FOOD_NUTRIENT[:1]}
    run(
        root,
        "import",
        str(small_zip(root / "b.zip", changed | {"food_portion.csv": FOOD_PORTION[:1]})),
    )
    number = len(read_library(root).foods)
    said = run(root, "refresh").output
    assert f"Not compared, for their kind of food was not imported: {number} foods" in said
    assert "No figures changed" in said


def test_refresh_leaves_a_portion_that_its_record_does_not_weigh(filled: Path) -> None:
    run(filled, "add", "101", "--id", "beans-odd")
    file = filled / FILE
    file.write_text(file.read_text("utf-8").replace("0.5 cup, mashed", "0.5 cup, crushed"), "utf-8")
    said = run(filled, "refresh").output
    told = "The record does not weigh this portion any more; it was left as it was"
    assert f"{told}: beans-odd: 0.5 cup, crushed" in said
    assert "grams: 90.5" in file.read_text("utf-8")


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["999"], "no record 999 is in the index of foods"),
        (["101", "--id", "apple-raw"], "`apple-raw` is the id of another food"),
        (["101", "--id", "Odd Beans"], "the id cannot be `Odd Beans`"),
        (["101", "--group", "fruits"], "did you mean `fruit`?"),
    ],
)
def test_what_cannot_be_added_is_refused_and_the_file_stays(
    filled: Path, words: list[str], said: str
) -> None:
    before = (filled / FILE).read_bytes()
    assert said in run(filled, "add", *words, code=1).output
    assert (filled / FILE).read_bytes() == before


def test_a_record_is_added_once(filled: Path) -> None:
    run(filled, "add", "101", "--id", "beans-odd")
    said = run(filled, "add", "101", "--id", "beans-again", code=1).output
    assert "in your library already, as `beans-odd`" in said


def test_refresh_lists_old_and_new_and_what_is_gone(filled: Path) -> None:
    run(filled, "add", "101", "--id", "beans-odd")
    text = (filled / FILE).read_text("utf-8")
    text = text.replace("protein: 8.86, fat: no value", "protein: 8.8, fat: no value")
    (filled / FILE).write_text(text.replace("grams: 90.5,", "grams: 91, "), "utf-8")
    said = run(filled, "refresh").output
    assert "beans-odd: protein: 8.8 → 8.86" in said
    assert "beans-odd: 0.5 cup, mashed: 91 → 90.5" in said
    assert "The record is gone; the entry was left as it was: apple-raw" in said
    assert "2 figures changed" in said
    assert "2 figures" not in run(filled, "refresh").output


def test_refresh_writes_what_an_older_file_lacks(filled: Path) -> None:
    run(filled, "add", "101", "--id", "beans-odd")
    before = (filled / FILE).read_text("utf-8")
    entry = before[before.index("  beans-odd:") :]
    older = before.replace(
        entry, entry.replace(", potassium: no value, vitamin_c: no value", "", 1)
    )
    assert older != before
    (filled / FILE).write_text(older, "utf-8")
    said = run(filled, "refresh").output
    assert "potassium: written for 1 food that did not have it" in said
    assert "2 figures changed" in said
    assert (filled / FILE).read_text("utf-8") == before


def test_a_broken_zip_ends_in_a_sentence_with_file_and_line(filled: Path) -> None:
    rows = (*FOOD_NUTRIENT, ("9", "102", "1003", "NaN", "1"))
    file = small_zip(filled / "b.zip", {"food_nutrient.csv": rows})
    said = run(filled, "import", str(file), code=1).output
    assert "b.zip/food_nutrient.csv:9:1: `amount` must be a figure of 0 or more, not `NaN`" in said
    assert "Nothing was written." in said


BREAD = (
    *FOOD,
    ("301", "sr_legacy_food", "Bread, egg, with raisins, odd", "18", "2019-04-01"),
    ("302", "sr_legacy_food", "Cassava, raw, odd", "11", "2019-04-01"),
    ("303", "sr_legacy_food", "Candies, hard, odd", "19", "2019-04-01"),
)


def with_bread(root: Path, figures: tuple[tuple[str, ...], ...] = ()) -> Path:
    """A site with an index of three records more."""
    changed = {"food.csv": BREAD, "food_nutrient.csv": (*FOOD_NUTRIENT, *figures)}
    run(root, "import", str(small_zip(root / "c.zip", changed)))
    return root


def test_what_nobody_looked_at_is_written_so_and_asked_for(root: Path) -> None:
    said = run(with_bread(root), "add", "301", "--id", "egg-bread").output
    assert "its record speaks of [eggs, wheat]" in said
    assert "Nobody has looked yet whether a child under 4 can choke on it." in said
    added = food(root, "egg-bread").entry
    assert added.not_looked_at == ("allergens", "choking")
    assert added.contains == ()
    assert not added.can_choke


def test_what_is_said_of_allergens_and_choking_is_written(root: Path) -> None:
    words = ("--id", "egg-bread", "--allergens", "Wheat, eggs", "--no-choking")
    said = run(with_bread(root), "add", "301", *words).output
    assert "looked" not in said
    added = food(root, "egg-bread").entry
    assert added.not_looked_at == ()
    assert added.contains == ("eggs", "wheat")
    assert added.choking is False


def test_none_is_said_in_a_word_and_held_against_the_record(root: Path) -> None:
    words = ("--id", "egg-bread", "--allergens", "none", "--choking")
    said = run(with_bread(root), "add", "301", *words).output
    assert "Its record speaks of [eggs, wheat], and its entry does not: look again." in said
    added = food(root, "egg-bread").entry
    assert added.allergens == ()
    assert added.choking is True


def test_a_shape_that_can_choke_is_held_against_what_was_said(root: Path) -> None:
    """Hard candy: USDA preschool food safety page, references.md 4.1 (status R)."""
    words = ("--id", "odd-candy", "--allergens", "none", "--no-choking")
    said = run(with_bread(root), "add", "303", *words).output
    assert "speaks of hard candy, gum, which a child under 4 can choke on: look again." in said


def test_an_allergen_misspelled_is_told_before_anything_is_written(root: Path) -> None:
    before = (with_bread(root) / FILE).read_text("utf-8")
    said = run(root, "add", "301", "--allergens", "weat", code=1).output
    assert "`weat` is none of the nine allergens" in said
    assert "did you mean `wheat`? Write `none` where none is plain" in said
    assert (root / FILE).read_text("utf-8") == before


def test_a_raw_food_is_marked_so_that_no_lesson_names_it(root: Path) -> None:
    """Raw cassava gives off cyanide (from memory)."""
    said = run(with_bread(root), "add", "302", "--id", "odd-cassava").output
    assert "no lesson can name `odd-cassava`: look for a cooked record" in said
    assert "In a lesson, write" not in said
    assert "look for a cooked record" in run(root, "add", "302", code=1).output
    assert "write {food: odd-cassava" not in run(root, "find", "odd", "cassava").output
    assert food(root, "odd-cassava").entry.raw
    assert '"odd-cassava"' not in (root / "site_data/lesson.schema.json").read_text("utf-8")


@pytest.mark.parametrize(
    ("figures", "what"),
    [
        # An apple's figures in SR Legacy, 171688 [R], a tenfold or a digit off
        ({"1008": "3070"}, "cannot hold 3070 kcal of energy in 100 g: 902 kcal is the most"),
        ({"2000": "103"}, "cannot hold 103 g of sugars in 100 g: 100 g is the most"),
        ({"1079": "24"}, "cannot hold 24 g of fiber in 13.81 g of carbohydrate"),
    ],
)
def test_a_record_that_cannot_be_is_not_added(
    root: Path, figures: dict[str, str], what: str
) -> None:
    apple = {"1008": "52", "1003": "0.26", "1004": "0.17", "1005": "13.81", "1079": "2.4"}
    rows = tuple(
        (str(90 + number), "301", nutrient, amount, "1")
        for number, (nutrient, amount) in enumerate({**apple, **figures}.items())
    )
    before = (with_bread(root, rows) / FILE).read_text("utf-8")
    assert what in run(root, "add", "301", code=1).output
    assert (root / FILE).read_text("utf-8") == before


def test_a_record_that_may_be_is_added_and_told(root: Path) -> None:
    """Alcohol gives 7 kcal/g (NCBI Bookshelf NBK83822, status R): wine holds more than 4-4-9 says."""
    wine = {"1008": "85", "1003": "0.07", "1004": "0", "1005": "2.61"}
    rows = tuple(
        (str(90 + number), "301", nutrient, amount, "1")
        for number, (nutrient, amount) in enumerate(wine.items())
    )
    said = run(with_bread(root, rows), "add", "301", "--id", "odd-wine").output
    assert "may not hold 85 kcal in 100 g" in said
    assert "alcohol gives energy too" in said
    assert food(root, "odd-wine").entry.fdc == 301


def test_an_import_tells_what_no_food_can_be(root: Path) -> None:
    """Five records with more energy than pure fat: three are shown, two counted."""
    foods = tuple(
        (str(401 + number), "sr_legacy_food", f"Odd {number}", "18", "2019-04-01")
        for number in range(5)
    )
    figures = tuple((str(50 + n), food[0], "1008", "3070", "1") for n, food in enumerate(foods))
    changed = {"food.csv": (*FOOD, *foods), "food_nutrient.csv": (*FOOD_NUTRIENT, *figures)}
    said = run(root, "import", str(small_zip(root / "d.zip", changed))).output
    assert "not added by `foods add`: “Odd 0”, 401, cannot hold 3070 kcal of energy" in said
    assert said.count("Cannot be") == 3
    assert "And 2 records more that cannot be." in said
    assert "Cannot be" not in run(root, "import", str(small_zip(root / "e.zip"))).output
