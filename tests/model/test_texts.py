"""One list of a lesson's texts, each with who reads or hears it, and everybody asks that list."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Annotated, Literal

import pytest
from pydantic import Field

from generator.check.claims import words_against_numbers
from generator.check.kind_words import kind_words
from generator.check.reading import easy_to_read
from generator.check.spoken_numbers import spoken_numbers
from generator.compute.result import LessonResult
from generator.model.base import Frozen
from generator.model.ids import StopIds
from generator.model.lesson import LessonHead, Video
from generator.model.stops import STOP_KINDS
from generator.model.stops.base import BaseStop
from generator.model.text_marks import For, Heading, Script, Text, marked_fields, unmarked_fields
from generator.model.texts import lesson_texts, translatable
from tests.project import GOOD, worked


@pytest.mark.parametrize("model", [LessonHead, Video, *STOP_KINDS.values()])
def test_every_field_of_words_says_whom_it_is_for(model: type[Frozen]) -> None:
    assert unmarked_fields(model) == ()


def test_a_field_that_says_nothing_is_named() -> None:
    class Inner(Frozen):
        hidden: tuple[str, ...]

    class Outer(Frozen):
        plain: str | None = None
        told: Text
        inner: Inner

    assert unmarked_fields(Outer) == ("plain", "Inner.hidden")
    assert [field.name for field in marked_fields(Outer)] == ["told", "inner"]


def test_who_reads_and_hears_the_good_lesson(tmp_path: Path) -> None:
    file = worked(tmp_path, GOOD).lesson.file

    def last(*whom: For, prose: bool = False) -> list[str]:
        return [one.text for one in lesson_texts(file, *whom, prose=prose)]

    assert last(For.LEARNER_HEARS) == ["Hello from Larkmead."]
    assert last(For.TEACHER) == ["carton"]
    assert last(For.LEARNER_READS, prose=True) == [
        "Find the gap.",
        "Subtract.",
        "Which side holds more?",
        "Look at the amounts.",
        "We will see.",
        "What do you like?",
        "Something warm",
    ]
    assert {"Two breakfasts", "At home", "Juice"} <= set(last(For.LEARNER_READS))
    assert not {"breakfast", "oatmeal-cooked", "march", "energy", "gap"} & set(last())


class QuizStop(BaseStop):
    """A made-up kind: nothing but its fields says what becomes of its words."""

    kind: Literal["quiz"] = "quiz"
    at: None = None
    label: Heading
    choices: Annotated[tuple[Text, ...], Field(min_length=2)]
    aside: Script


HARD = "Notwithstanding considerable nutritional peculiarities, participants extrapolate systematically."


def with_a_quiz(folder: Path, *choices: str, aside: str = "Choose.") -> LessonResult:
    result = worked(folder, GOOD)
    stop = QuizStop(label="Pick 7777", choices=choices, aside=aside)
    file = result.lesson.file.model_copy(update={"stops": (*result.lesson.file.stops, stop)})
    ids = (*result.lesson.ids, StopIds(stop="quiz"))
    return replace(result, lesson=replace(result.lesson, file=file, ids=ids))


def test_a_new_field_is_asked_by_every_rule_of_words(tmp_path: Path) -> None:
    result = with_a_quiz(
        tmp_path, "The bagel holds almost triple.", "You earn it, says 8888.", *[HARD] * 12
    )
    keys = {key for key, _, _ in translatable(result.lesson)}
    assert {
        ("stops", "quiz", "label"),
        ("stops", "quiz", "choices", 1),
        ("stops", "quiz", "aside"),
    } <= keys
    assert [one.what for one in kind_words(result)] == [
        "“earn” makes food a matter of guilt or movement its price"
    ]
    assert [one.what for one in words_against_numbers(result)]
    assert list(easy_to_read(result))
    told = " ".join(one.what for one in spoken_numbers(result))
    assert "7777" in told
    assert "8888" in told


def test_what_is_heard_may_be_harder_than_what_is_read(tmp_path: Path) -> None:
    result = with_a_quiz(tmp_path, "One.", "Two.", aside=" ".join([HARD] * 12))
    assert list(easy_to_read(result)) == []


def test_the_list_knows_which_stop_a_text_stands_in(tmp_path: Path) -> None:
    stops = {one.text: one.stop for one in lesson_texts(worked(tmp_path, GOOD).lesson.file)}
    assert (stops["Two breakfasts"], stops["We will see."], stops["Juice"]) == (None, 1, 2)
