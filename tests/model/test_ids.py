"""Names of stops and rows: made of what stands there, and not of where it stands."""

from __future__ import annotations

import re
from pathlib import Path
from random import Random

import pytest

from generator.model.ids import PAGE_IDS, StopIds
from generator.model.lesson import Lesson
from generator.model.names import slug
from generator.model.texts import in_language
from tests.project import GOOD, library, read, site

STOP_ID = re.compile(r"[a-z][a-z0-9]*(-[a-z0-9]+)*")


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Make a guess", "make-a-guess"),
        ("¿Qué almuerzo?", "que-almuerzo"),
        ("Two lunches, three rows and one more", "two-lunches-three-rows"),
        ("Incomprehensibilities-and-more", "incomprehensibilities"),
        ("A" * 60, "a" * 24),
        ("Straße", "strasse"),
    ],
)
def test_a_text_becomes_a_short_name(text: str, name: str) -> None:
    assert slug(text) == name


def test_letters_without_a_spelling_here_have_a_name_too() -> None:
    names = {slug(text) for text in ("早餐", "ዳቦ", "شوربة")}
    assert len(names) == 3
    assert all(STOP_ID.fullmatch(name) for name in names)


def good(root: Path, *changes: tuple[str, str]) -> Lesson:
    text = GOOD
    for old, new in changes:
        assert old in text
        text = text.replace(old, new)
    lesson = read(root, text)
    assert isinstance(lesson, Lesson), list(map(str, lesson))
    return lesson


def test_stops_rows_and_sides_of_a_lesson(tmp_path: Path) -> None:
    assert good(tmp_path).ids == (
        StopIds(stop="hello-from-larkmead"),
        StopIds(stop="guess"),
        StopIds(
            stop="breakfast",
            parts=("bagel-plain_oatmeal-cooked", "apple-raw_juice"),
            foods=(("oatmeal-cooked", "bagel-plain"), ("apple-raw", "juice")),
            sides=("at-home", "on-the-way"),
        ),
        StopIds(stop="move-breakfast"),
        StopIds(stop="what-do-you-like"),
    )


@pytest.mark.parametrize("title", ["Tens", "7 apples", "Main"])
def test_a_made_name_is_none_of_the_page_s_own_and_begins_with_a_letter(
    tmp_path: Path, title: str
) -> None:
    lesson = good(tmp_path, ("- talk:\n", f"- talk:\n      title: {title}\n"))
    name = lesson.ids[-1].stop
    assert name == f"talk-{slug(title)}"
    assert name not in PAGE_IDS
    assert STOP_ID.fullmatch(name)


def test_a_row_has_the_id_it_is_given(tmp_path: Path) -> None:
    second = "[{food: apple-raw, amount: 150 g}, {name: Juice, value: 110, source: carton}]"
    lesson = good(tmp_path, (f"- {second}", f"- {{id: drinks, foods: {second}}}"))
    assert lesson.ids[2].parts == ("bagel-plain_oatmeal-cooked", "drinks")


def test_rows_of_the_same_foods_are_told_apart_by_their_amounts(tmp_path: Path) -> None:
    first = "[{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]"
    other = "[{food: oatmeal-cooked, amount: 2 cups}, {food: bagel-plain, amount: 1 bagel}]"
    lesson = good(tmp_path, (first, f"{first}\n        - {other}"), ("[march,", "[march, march,"))
    assert lesson.ids[2].parts == (
        "bagel-plain-1-bagel_oatmeal-cooked-1-cup",
        "bagel-plain-1-bagel_oatmeal-cooked-2-cups",
        "apple-raw_juice",
    )


DAY = """
  - day:
      person: {name: Ana, age: 34, sex: woman, activity: active}
      did: [Walked.]
      ate:
        - {food: oatmeal-cooked, amount: 1 cup, when: Breakfast}
        - {food: apple-raw, amount: 1 medium}
        - {food: apple-raw, amount: 1 medium, when: Lunch}
        - {food: oatmeal-cooked, amount: 2 cups}
        - {name: Broth, value: 15, source: card}
"""


def test_foods_of_a_day_are_told_apart_by_amount_or_meal(tmp_path: Path) -> None:
    assert good(tmp_path, ("  - talk:", f"{DAY[1:]}  - talk:")).ids[4] == StopIds(
        stop="day-of-ana",
        parts=(
            "oatmeal-cooked-1-cup",
            "apple-raw-1-medium-breakfast",
            "apple-raw-1-medium-lunch",
            "oatmeal-cooked-2-cups",
            "broth",
        ),
        foods=(
            ("oatmeal-cooked",),
            ("apple-raw",),
            ("apple-raw",),
            ("oatmeal-cooked",),
            ("broth",),
        ),
    )


def test_the_same_food_twice_at_one_meal_is_a_problem(tmp_path: Path) -> None:
    found = read(
        tmp_path, GOOD.replace("  - talk:", f"{DAY[1:].replace(', when: Lunch', '')}  - talk:")
    )
    assert isinstance(found, list)
    assert [one.what for one in found] == [
        "foods 2 and 3 of this day are the same, of the same amount and meal"
    ]


FOODS = ("apple-raw", "pear-raw", "banana-raw", "orange-raw", "bagel-plain")


def test_names_stay_when_rows_and_sides_are_moved_added_and_taken_out(tmp_path: Path) -> None:
    """Sixty random orders of rows and sides: whatever is there is called as it was."""
    pairs = [(one, other) for one in FOODS for other in FOODS if one < other]
    called: dict[frozenset[str], str] = {}
    random = Random(8)  # noqa: S311  # nothing secret: the same orders at every run
    for _ in range(60):
        some = random.sample(pairs, random.randint(1, 8))
        rows = [random.sample(pair, 2) for pair in some]
        written = "".join(
            f"        - [{{food: {one}, amount: 100 g}}, {{food: {other}, amount: 100 g}}]\n"
            for one, other in rows
        )
        start, end = GOOD.index("        - ["), GOOD.index("      solve")
        text = GOOD[:start] + written + GOOD[end:]
        text = text.replace("[march, side-step]", f"[{', '.join(['march'] * len(rows))}]")
        lesson = read(tmp_path, text)
        assert isinstance(lesson, Lesson), list(map(str, lesson))
        for row, name in zip(rows, lesson.ids[2].parts, strict=True):
            assert called.setdefault(frozenset(row), name) == name


def test_a_translation_keeps_the_names(tmp_path: Path) -> None:
    root = site(tmp_path)
    (root / "lessons" / "meal").mkdir()
    (root / "lessons/meal/lesson.es.yaml").write_text(
        "stops:\n  guess: {prompt: ¿Cuál?}\n  breakfast: {sides: [En casa, En camino]}\n", "utf-8"
    )
    lesson = read(root, GOOD)
    assert isinstance(lesson, Lesson), list(map(str, lesson))
    assert "es" in library().site.languages
    spanish = in_language(lesson, "es", lambda text: f"?{text}", str)
    assert spanish.file.stops[1] != lesson.file.stops[1]
    assert spanish.ids == lesson.ids
