"""The family sheet: which gap is found again, and what is not talked about at home."""

from __future__ import annotations

import pytest

from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import stop_views
from generator.present.pages.page import Surround
from generator.present.pages.table import START, lesson_links, page_around
from generator.present.papers.again import again_of
from generator.present.papers.at_home import may_go_home
from generator.present.papers.family import family_view
from generator.present.views.family import FamilyView
from generator.present.words.say import Say
from tests.worked import library, worked

ROW = "[{food: apple-raw, amount: 1 medium}, {food: apple-pie, amount: 1 slice}]"
DAY = """
- day:
    person: {name: Mina, age: 40, sex: woman, activity: active}
    ate: [{food: apple-raw, amount: 1 medium}]
    did: [Walked]
"""


def say(language: str = "en") -> Say:
    return Say(library().words[language])


def compare(*rows: str) -> str:
    lines = "".join(f"        - {row}\n" for row in rows)
    return (
        "- compare:\n    id: lunch\n    measure: energy\n    sides: [At home, On the way]\n"
        f"    rows:\n{lines}    solve: [gap]\n"
    )


def test_the_row_without_help_is_found_again() -> None:
    other = ROW.replace("apple-pie, amount: 1 slice", "pizza-cheese, amount: 1 slice")
    result = worked(compare(f"{{help: worked, foods: {ROW}}}", other))
    again = again_of(result, say())
    assert again.of is result.comparisons["lunch"].rows[1]
    assert "pizza" in again.view.given[1].food.lower()


def test_a_row_with_help_serves_where_there_is_no_other() -> None:
    result = worked(compare(f"{{help: worked, foods: {ROW}}}"))
    again = again_of(result, say())
    assert again.of is result.comparisons["lunch"].rows[0]
    gap = result.comparisons["lunch"].rows[0].gap.size
    assert str(gap) in again.view.answer


def test_a_lesson_of_days_alone_gives_its_two_numbers() -> None:
    result = worked(DAY)
    again = again_of(result, say())
    assert again.of in result.days.values()
    assert [one.side for one in again.view.given] == ["The day gave", "The day took"]


def test_a_lesson_without_numbers_gives_a_practice_problem() -> None:
    again = again_of(worked("- talk: {prompt: What now?, ideas: [Half of each]}\n"), say())
    assert again.of is None
    assert again.view.given == ()
    # the first problem is a gap: digits, a minus sign, digits, and its answer by Python's own arithmetic
    first, _, second, _ = again.view.asks.replace(",", "").split()
    assert int(again.view.answer.replace(",", "")) == int(first) - int(second)


@pytest.mark.parametrize(
    ("language", "question", "goes"),
    [
        ("en", "What would your family change first?", True),
        ("en", "How did your body tell you what it needed?", False),
        ("en", "What did you eat today?", False),
        ("en", "Hungry, or just curious?", False),
        ("en", "How did you find the gap of the bean soups?", True),
        ("es", "¿Cómo te avisó tu cuerpo?", False),
        ("es", "¿Qué comiste hoy?", False),
        ("es", "¿Qué llevarías de cada almuerzo?", True),
    ],
)
def test_nothing_about_bodies_or_what_was_eaten_goes_home(
    language: str, question: str, goes: bool
) -> None:
    assert may_go_home(question, say(language)) is goes


def sheet_of(stops: str) -> FamilyView:
    """The sheet of a lesson of these stops."""
    result = worked(stops)
    around = Surround(library().site, say(), "", (), {}, preview=False)
    page, links = page_around(START, result, around), lesson_links(result, around)
    return family_view(PageInLesson(result, stop_views(result, around), around, page, links))


def test_the_sheet_asks_two_things_and_none_about_a_body() -> None:
    talk = "- talk: {prompt: %s, ideas: [Half of each]}\n"
    sheet = sheet_of(talk % "How did your body tell you?" + talk % "What would you pack?")
    assert [str(one) for one in sheet.talks] == [
        "What would you pack?",
        "Which gap was larger or smaller than you had guessed?",
    ]


def test_the_gap_to_find_again_is_not_told_above() -> None:
    other = ROW.replace("apple-pie, amount: 1 slice", "pizza-cheese, amount: 1 slice")
    sheet = sheet_of(compare(f"{{help: worked, foods: {ROW}}}", other))
    (found,) = sheet.found
    assert len(found.lines) == 2  # the row with help, and all together
    assert sheet.again.answer not in " ".join(found.lines)
    assert sheet.left_for_below


def test_a_sheet_without_moves_says_nothing_of_moving() -> None:
    sheet = sheet_of(compare(ROW))
    assert sheet.before == ()
    assert len(sheet.intro) == 1
