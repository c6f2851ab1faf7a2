"""What a lesson says about care names the foods and allergens it really shows."""

from __future__ import annotations

from dataclasses import replace

from generator.present.words.care import allergen_line, care_lines
from generator.present.words.say import Say
from tests.worked import library, worked

SAY = Say(library().words["en"])
ROW = "- compare:\n    id: x\n    measure: energy\n    sides: [A, B]\n    rows: [[{0}, {1}]]\n"
GRAPES = "{food: grapes-raw, amount: 1 cup}"
RICE = "{food: rice-white-cooked, amount: 1 cup}"
MILK = "{food: milk-whole, amount: 1 cup}"


def test_foods_that_can_choke_a_small_child_are_named() -> None:
    """Whole grapes: USDA preschool food safety page, references.md 4.1, status R."""
    lines = care_lines(worked(ROW.replace("{0}", GRAPES).replace("{1}", MILK)), SAY)
    assert "In this lesson: grapes." in lines
    assert not any("milk" in line for line in lines if "contain" not in line)


def test_nothing_is_named_where_no_food_can() -> None:
    lines = care_lines(worked(ROW.replace("{0}", RICE).replace("{1}", MILK)), SAY)
    assert not any(line.startswith("In this lesson") for line in lines)


def test_a_comparison_in_fiber_or_potassium_alone_speaks_of_an_own_plan() -> None:
    row = ROW.replace("{0}", RICE).replace("{1}", MILK)
    for measure, told in (
        ("energy", ""),
        ("fiber", "less fiber"),
        ("potassium", "potassium to eat"),
    ):
        lines = care_lines(worked(row.replace("energy", measure)), SAY)
        plans = [line for line in lines if line.endswith("Their own plan comes first.")]
        assert [told in line for line in plans] == [True] * bool(told)


def test_allergens_are_those_of_the_foods_shown() -> None:
    assert "milk" in allergen_line(worked(ROW.replace("{0}", RICE).replace("{1}", MILK)), SAY)
    none = allergen_line(worked(ROW.replace("{0}", RICE).replace("{1}", GRAPES)), SAY)
    assert none == SAY("allergens_none")  # silence would read as if there were none


def test_allergens_stand_in_the_box_of_care_and_not_where_no_food_is() -> None:
    shown = worked(ROW.replace("{0}", RICE).replace("{1}", MILK))
    assert (
        care_lines(shown, SAY)[1]
        == "Foods in this lesson contain milk. A packaged food can hold others: read its label."
    )
    talk = care_lines(worked("- talk: {prompt: What next?}\n"), SAY)
    assert not any("allergen" in line or "contain" in line for line in talk)


def test_where_a_pot_is_shown_it_is_said_how_food_is_warmed_and_kept() -> None:
    """165 °F for leftovers: FoodSafety.gov, 2019 (R); two hours, one above 90 °F: the same house (M)."""
    row = ROW.replace("{0}", RICE).replace("{1}", MILK)
    for cooking in (True, False):
        result = worked(row)
        file = result.lesson.file.model_copy(update={"cooking": cooking})
        told = replace(result, lesson=replace(result.lesson, file=file))
        assert any("165" in line for line in care_lines(told, SAY)) is cooking
