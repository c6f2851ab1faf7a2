"""A passage of a page that leads to a lesson is held against that lesson."""

from __future__ import annotations

from functools import cache

import pytest

from generator.check.page_numbers import HandPage, page_numbers
from generator.compute.result import LessonResult
from generator.steps.work import work_lesson
from tests.project import ROOT, library

LINK = "[River walk](river-walk/index.html)"


@cache
def lessons(language: str) -> dict[str, LessonResult]:
    """Two lessons of the demo."""
    names = ("river-walk", "soup-night")
    found = {one: work_lesson(ROOT, f"lessons/{one}/lesson.yaml", library()) for one in names}
    return {name: one.results[language] for name, one in found.items()}


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (f"In {LINK} the apple holds 90.\n", []),
        (f"In {LINK} the apple\nholds 410.\n", ["2:7"]),
        (f"- {LINK}: the gap in row two is 320.\n- Soup holds 3.\n", []),
        (f"- {LINK}: the gap in row two is 330.\n- Another: the apple holds 7.\n", ["1:62"]),
        (f"{LINK} takes 18 minutes, for grades 3 to 5, in 2 parts.\n", []),
        (f"In {LINK} the apple pie holds twice the apple.\n", ["1:54"]),
        ("The apple holds 7.\n", []),
        (f"{LINK} and [soups](soup-night/index.html): 4,711 kcal.\n", []),
    ],
)
def test_a_passage(text: str, told: list[str]) -> None:
    found = page_numbers(HandPage("lessons/a.md", text, "en"), lessons("en"))
    assert [f"{one.place.line}:{one.place.column}" for one in found] == told


def test_a_page_of_another_language_leads_to_the_lesson_in_it() -> None:
    text = "En [el paseo](river-walk/index.html) la manzana tiene 410."
    (found,) = page_numbers(HandPage("lessons/es/a.md", text, "es"), lessons("es"))
    assert found.what.startswith("“410” is said of “Manzana”, which holds 90")
