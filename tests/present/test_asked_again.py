"""A question asked before and after: written once, told nobody too early, and whole wherever it stands."""

from __future__ import annotations

from xml.etree.ElementTree import Element

import pytest

from generator.compute.result import LessonResult
from generator.model.texts import lesson_texts
from generator.present.recording.slides.contents import contents, pause
from generator.present.words.say import Say
from tests.html_page import text
from tests.present.test_notes import pages
from tests.project import library, worked

LESSON = """\
title: Two breakfasts
summary: Find the gap.
grades: 3-5
minutes: 10
stops:
  - ask:
      id: guess
      prompt: Which side holds {1} thing more?
      which: {of: breakfast, holds: most, among: sides}
      hint: Look at the amounts.
      reveal: The totals tell it.
  - compare:
      id: breakfast
      measure: energy
      sides: [At home, On the way]
      rows:
        - [{food: oatmeal-cooked, amount: 1 cup}, {food: bagel-plain, amount: 1 bagel}]
      solve: [gap]
  - ask:
      id: once-more
      title: Once more
      asks_again: guess
"""
SAY = Say(library().words["en"])


@pytest.fixture(scope="module")
def result(tmp_path_factory: pytest.TempPathFactory) -> LessonResult:
    return worked(tmp_path_factory.mktemp("again"), LESSON)


@pytest.fixture(scope="module")
def made(result: LessonResult) -> dict[str, Element]:
    return pages(result)


def stop(made: dict[str, Element], name: str) -> Element:
    return next(one for one in made["index.html"].iter("section") if one.get("id") == name)


def test_its_texts_stand_in_the_lesson_once(result: LessonResult) -> None:
    """So they are translated, read and checked once."""
    texts = [one.text for one in lesson_texts(result.lesson.file)]
    assert texts.count("Which side holds 1 thing more?") == 1
    assert texts.count("The totals tell it.") == 1


def test_before_nobody_is_told(made: dict[str, Element]) -> None:
    before = text(stop(made, "guess"))
    assert "Which side holds 1 thing more?" in before
    assert "we ask this again later" in before
    assert "Keep my answer" in before
    for held_back in ("Look at the amounts", "The totals tell it", "The answer", "Hint"):
        assert held_back not in before


def test_after_it_is_asked_with_hint_and_answer(made: dict[str, Element]) -> None:
    after = text(stop(made, "once-more"))
    for told in (
        "Which side holds 1 thing more?",
        "Look at the amounts",
        "The answer: On the way.",
        "The totals tell it",
        "Check my choice",
    ):
        assert told in after
    assert "we ask this again later" not in after


def test_each_keeps_its_own_answer(made: dict[str, Element]) -> None:
    forms = [form for name in ("guess", "once-more") for form in stop(made, name).iter("form")]
    assert [form.get("id") for form in forms] == ["guess--answer", "once-more--answer"]
    assert [form.get("data-answer") for form in forms] == ["on-the-way", "on-the-way"]
    assert [form.get("data-before") is not None for form in forms] == [True, False]


def test_the_comparison_does_not_lead_back_to_it(made: dict[str, Element]) -> None:
    links = [one.get("href", "") for one in stop(made, "breakfast").iter("a")]
    assert not [href for href in links if href.endswith("#guess")]


@pytest.mark.parametrize("page", ["worksheet.html", "answers.html"])
def test_paper_asks_it_twice(made: dict[str, Element], page: str) -> None:
    assert text(made[page]).count("Which side holds 1 thing more?") == 2


def test_the_notes_say_when_to_tell(made: dict[str, Element]) -> None:
    notes = text(made["notes.html"])
    assert notes.count("The answer: On the way.") == 1
    assert "say neither right nor wrong" in notes
    assert "Say neither right nor wrong yet: it is asked again further on." in notes


def test_slides_ask_it_twice(result: LessonResult) -> None:
    for index in (0, 2):
        assert "Which side holds 1 thing more?" in str(contents(index, result, SAY))
        assert pause(index, result, SAY).task == "Which side holds 1 thing more?"
