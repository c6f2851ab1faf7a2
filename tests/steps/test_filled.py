"""Numbers named in braces are filled in before a text is checked or shown; the rest is told."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from generator.check import check_lesson
from generator.check.spoken_numbers import spoken_numbers
from generator.compute.result import LessonResult
from generator.model.lesson import Lesson
from generator.model.texts import in_language, translatable
from generator.model.translation import Translation, text_mark
from generator.problems import Weight
from generator.steps.filled import worked_out
from tests.caption_lesson import LESSON, lines
from tests.project import library, read


def lesson_of(folder: Path, text: str) -> Lesson:
    """A lesson as it is read."""
    lesson = read(folder, text)
    assert isinstance(lesson, Lesson), list(map(str, lesson))
    return lesson


def filled(folder: Path, old: str, new: str) -> LessonResult:
    """The lesson with one text changed, its braces filled."""
    assert old in LESSON
    return worked_out(lesson_of(folder, LESSON.replace(old, new, 1)), library())


@pytest.mark.parametrize(
    ("written", "shown"),
    [
        ("All of it: {breakfast.total.gap}.", "All of it: 1,000."),
        ("Juice {breakfast.carrot-salad_juice.on-the-way}.", "Juice 1,020."),
        ("Juice { breakfast.juice+carrot-salad.on-the-way }.", "Juice 1,020."),
        ("Say {26} and {1,200}, or {twenty-six}.", "Say 26 and 1,200, or twenty-six."),
        ("A set: {{a, b}}.", "A set: {a, b}."),
    ],
)
def test_a_reveal(tmp_path: Path, written: str, shown: str) -> None:
    result = filled(tmp_path, "We will see.", f'"{written}"')
    assert result.lesson.file.stops[1].reveal == shown
    assert [one.what for one in check_lesson(result) if "cap for" not in one.what] == []


def test_the_name_of_the_own_stop_may_be_left_out(tmp_path: Path) -> None:
    result = filled(tmp_path, "solve: [gap, count, total]", "prompt: 'Find {total.gap}.'")
    assert result.lesson.file.stops[2].prompt == "Find 1,000."
    result = filled(tmp_path, "for: breakfast", "for: breakfast\n      prompt: 'Do {total.count}.'")
    assert result.lesson.file.stops[3].prompt == "Do 100."
    result = filled(tmp_path, "summary: Find the gap.", "summary: 'Find {total.gap}.'")
    assert result.lesson.file.summary == "Find 1,000."


def test_a_worked_stop_has_the_filled_text_too(tmp_path: Path) -> None:
    result = filled(tmp_path, "solve: [gap, count, total]", "prompt: 'Find {total.gap}.'")
    assert result.comparisons["breakfast"].stop.prompt == "Find 1,000."


@pytest.mark.parametrize(
    ("written", "what", "hint"),
    [
        (
            "All: {breakfast.totl.gap}.",
            "`{breakfast.totl.gap}` names no number of the lesson",
            "did you mean `{breakfast.total.gap}`?",
        ),
        ("A set: {a, b}.", "`{a, b}` names no number of the lesson", "see the names with"),
        ("Empty: {}.", "`{}` names no number of the lesson", "see the names with"),
    ],
)
def test_an_unknown_name_is_told_at_its_brace(
    tmp_path: Path, written: str, what: str, hint: str
) -> None:
    result = filled(tmp_path, "We will see.", f'"{written}"')
    (found,) = [one for one in check_lesson(result) if "names no number" in one.what]
    assert (found.what, found.weight) == (what, Weight.MUST)
    assert found.place.line == 13
    assert found.place.column == 16 + written.index("{")
    assert found.hint.startswith(hint)


def test_minutes_of_a_move_are_for_the_notes_and_named_by_nobody(tmp_path: Path) -> None:
    result = filled(tmp_path, "We will see.", "'{side-step.minutes}'")
    assert any("names no number" in one.what for one in check_lesson(result))


def test_what_stands_behind_a_brace_keeps_its_place(tmp_path: Path) -> None:
    new = "|\n        All of it is {breakfast.total.gap}, and {99} is meant.\n\n        Is it 4,711 kcal?"
    assert lines(spoken_numbers(filled(tmp_path, "We will see.", new))) == [
        "16:15: “4,711” is no number of the lesson here"
    ]


def test_a_number_that_is_meant_is_no_claim(tmp_path: Path) -> None:
    claim = "The bagel holds {} more than the oatmeal."
    told = filled(tmp_path, "We will see.", claim.format("26"))
    assert any("does not hold" in one.what for one in check_lesson(told))
    meant = filled(tmp_path, "We will see.", f"'{claim.format('{26}')}'")
    assert not any("does not hold" in one.what for one in check_lesson(meant))


def test_a_translation_is_filled_in_its_own_digits_and_grows_stale_by_what_is_written(
    tmp_path: Path,
) -> None:
    lesson = lesson_of(tmp_path, LESSON.replace("We will see.", "'{breakfast.total.gap} in all.'"))
    own = worked_out(lesson, library())
    original = {key: text for key, _, text in translatable(own.lesson)}
    key = ("stops", "guess", "reveal")
    assert original[key] == "{breakfast.total.gap} in all."
    texts = {key: "{breakfast.total.gap} en todo."}
    mark = f"{text_mark(original[key])} {text_mark(texts[key])}"
    made = Translation("es", texts, {"stops.guess.reveal": mark}, lesson.places)
    beside = replace(lesson, translations={"es": made})
    assert not made.is_stale(key, original[key])
    spanish = worked_out(in_language(beside, "es", str, lambda text: f"stale: {text}"), library())
    assert spanish.lesson.file.stops[1].reveal == "1,000 en todo."  # as US Spanish writes it
