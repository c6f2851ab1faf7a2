"""A day asks for a subtraction of two numbers that stand there, then which way the plum hangs, and answers kindly."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect


@pytest.fixture
def day(page: Page, built_site: Path, serve: Callable[[Path], str]) -> Locator:
    """The second day of the demo, which leans."""
    page.goto(f"{serve(built_site)}two-days/index.html")
    found = page.locator("day-balance").nth(1)
    expect(found.get_by_role("button", name="Check")).to_be_visible()
    return found


def both_numbers(day: Locator) -> tuple[int, int]:
    """What the day gave and took, as the page shows it above the question."""
    gave, took = day.locator("> .either-side b").all_inner_texts()
    return int(re.sub(r"\D", "", gave)), int(re.sub(r"\D", "", took))


def answer(day: Locator, gap: str, lean: str = "") -> None:
    if lean:
        day.get_by_role("radio", name=lean).check()
    day.get_by_role("textbox", name="How far apart").fill(gap)
    day.get_by_role("button", name="Check").click()


def hanging(day: Locator) -> Locator:
    """The plumb line above the question, which shows what is known."""
    return day.locator("[data-hangs] svg")


def test_the_subtraction_of_the_shown_numbers_is_right_and_the_plum_hangs(day: Locator) -> None:
    gave, took = both_numbers(day)
    assert took > gave
    expect(hanging(day)).to_have_attribute("aria-label", re.compile("Three hollow plums"))
    answer(day, str(took - gave), "To the right.")
    expect(day.get_by_role("status")).to_contain_text(f"Yes. The day took {took - gave}")
    expect(hanging(day)).to_have_attribute("aria-label", re.compile("side of what the day took"))


def test_after_a_right_subtraction_the_way_is_asked_for(day: Locator) -> None:
    gave, took = both_numbers(day)
    answer(day, str(took - gave))
    expect(day.get_by_role("status")).to_have_text(
        f"Yes, they are {took - gave} apart. Now choose which way the plum hangs."
    )
    answer(day, str(took - gave), "To the left.")
    expect(day.get_by_role("status")).to_contain_text(f"Yes, they are {took - gave} apart. Is that")
    expect(day.get_by_role("status")).not_to_contain_text("Not yet")
    expect(hanging(day)).to_have_attribute("aria-label", re.compile("Three hollow plums"))


def test_a_slip_in_the_subtraction_is_told_as_in_a_comparison(day: Locator) -> None:
    gave, took = both_numbers(day)
    answer(day, str(took + gave), "To the right.")
    expect(day.get_by_role("status")).to_contain_text("Not yet. That is the two added.")
    answer(day, "", "To the right.")
    expect(day.get_by_role("status")).to_have_text("Write the gap, then check.")


def test_a_slip_is_told_in_a_comparison_below_a_day_too(page: Page, day: Locator) -> None:
    """Both stops have scripts of their own, and what reads a wrong answer comes once for both."""
    failed: list[str] = []
    page.on("pageerror", lambda error: failed.append(str(error)))
    row = page.locator("form.gap-row").first
    first, second = (int(row.get_attribute(f"data-{side}") or "") for side in ("first", "second"))
    gave, took = both_numbers(day)
    answer(day, str(took + gave))
    row.locator("[name=gap]").fill(str(first + second))
    row.get_by_role("button", name="Check my numbers").click()
    for told in (day.get_by_role("status"), row.get_by_role("status")):
        expect(told).to_contain_text("Not yet. That is the two added.")
    assert failed == []


def test_the_answer_is_kept_and_can_be_changed(page: Page, day: Locator) -> None:
    gave, took = both_numbers(day)
    answer(day, str(took - gave), "To the right.")
    page.reload()
    expect(day.get_by_role("textbox", name="How far apart")).to_have_value(str(took - gave))
    expect(day.get_by_role("radio", name="To the right.")).to_be_checked()
    expect(day.get_by_role("status")).to_contain_text("Yes.")
    expect(hanging(day)).to_have_attribute("aria-label", re.compile("side of what the day took"))
    answer(day, "1", "To the right.")
    expect(hanging(day)).to_have_attribute("aria-label", re.compile("Three hollow plums"))


@pytest.mark.parametrize("width", [320, 390, 1280])
def test_the_name_of_a_meal_stands_alone_over_its_foods(
    page: Page, day: Locator, width: int
) -> None:
    page.set_viewport_size({"width": width, "height": 844})
    meals = day.locator(".day tbody").all()
    assert len(meals) == 4  # Breakfast, Lunch, Afternoon, Dinner
    above = 0.0
    for meal in meals:
        name, *foods = [each.bounding_box() or {} for each in meal.locator("th").all()]
        assert foods
        assert meal.get_by_role("rowheader").first.inner_text().istitle()
        assert name["y"] >= above - 1
        assert all(food["y"] >= name["y"] + name["height"] - 1 for food in foods)
        above = foods[-1]["y"] + foods[-1]["height"]
    assert page.evaluate("document.documentElement.scrollWidth") <= width
