"""A food that nobody has looked at is asked about once in a lesson, and the page says so."""

from __future__ import annotations

from dataclasses import replace

import pytest

from generator.check.looked_at import foods_looked_at
from generator.compute.result import LessonResult
from generator.model.food import Allergen
from generator.present.words.care import allergen_line
from generator.present.words.say import Say
from generator.problems import Weight
from tests.worked import library, worked

ROW = "[{food: oatmeal-cooked, amount: 1 cup}, {food: milk-whole, amount: 1 cup}]"
LESSON = f"""
- compare:
    id: c
    measure: energy
    sides: [Gate, Pond]
    rows:
      - {ROW}
      - {ROW.replace("1 cup", "2 cups")}
"""


def lesson(**changed: object) -> LessonResult:
    """A lesson with oatmeal twice, its entry changed."""
    food = library().foods["oatmeal-cooked"]
    other = replace(food, entry=food.entry.model_copy(update=changed))
    return worked(LESSON, replace(library(), foods={**library().foods, food.id: other}))


@pytest.mark.parametrize(
    ("changed", "what", "hint"),
    [
        ({"allergens": "not looked at"}, "its allergens", "`allergens: []` where none is plain"),
        ({"choking": "not looked at"}, "whether a child under 4 can choke", "`choking: true`"),
        (
            {"allergens": "not looked at", "choking": "not looked at"},
            "its allergens and whether",
            "or a list such as `[milk, wheat]` and `choking: true`",
        ),
    ],
)
def test_it_is_asked_about_once(changed: dict[str, object], what: str, hint: str) -> None:
    (one,) = foods_looked_at(lesson(**changed))
    assert one.weight is Weight.QUESTION
    assert f"`oatmeal-cooked` yet: {what}" in one.what
    assert hint in one.hint
    assert one.place.line == 13  # of its first row


def test_nothing_is_asked_of_what_was_looked_at() -> None:
    assert list(foods_looked_at(worked(LESSON))) == []
    assert list(foods_looked_at(lesson(allergens=(), choking=False))) == []
    assert list(foods_looked_at(lesson(allergens=(Allergen.WHEAT,), choking=True))) == []


def test_the_page_does_not_pass_over_it() -> None:
    """Common practice, no source: no line at all reads as if there were none."""
    say = Say(library().words["en"])
    told = "Nobody has checked the allergens of oatmeal yet: read the label."
    assert allergen_line(lesson(allergens="not looked at"), say).endswith(told)
    assert told not in allergen_line(worked(LESSON), say)
