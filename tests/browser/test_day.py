"""A day asks for a subtraction of two numbers that stand there, and answers kindly."""

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
    gave, took = day.locator(".both td").all_inner_texts()
    return int(re.sub(r"\D", "", gave)), int(re.sub(r"\D", "", took))


def answer(day: Locator, lean: str, gap: str) -> None:
    day.get_by_role("radio", name=lean).check()
    day.get_by_role("textbox", name="By how much?").fill(gap)
    day.get_by_role("button", name="Check").click()


def test_the_subtraction_of_the_shown_numbers_is_right(day: Locator) -> None:
    gave, took = both_numbers(day)
    assert took > gave
    answer(day, "The day took more than it gave.", str(took - gave))
    expect(day.get_by_role("status")).to_contain_text(f"Yes. The day took {took - gave}")


@pytest.mark.parametrize(
    ("lean", "off"),
    [("The day gave more than it took.", 0), ("The day took more than it gave.", 10)],
)
def test_another_answer_gets_a_kind_sentence(day: Locator, lean: str, off: int) -> None:
    gave, took = both_numbers(day)
    answer(day, lean, str(took - gave + off))
    expect(day.get_by_role("status")).to_have_text("Look at the two numbers again.")


def test_what_is_missing_is_asked_for(day: Locator) -> None:
    answer(day, "About even.", "")
    expect(day.get_by_role("status")).to_contain_text("write by how much")


def test_the_answer_is_kept(page: Page, day: Locator) -> None:
    gave, took = both_numbers(day)
    answer(day, "The day took more than it gave.", str(took - gave))
    page.reload()
    expect(day.get_by_role("textbox", name="By how much?")).to_have_value(str(took - gave))
    expect(day.get_by_role("radio", name="The day took more than it gave.")).to_be_checked()
    expect(day.get_by_role("status")).to_contain_text("Yes.")
