"""A text that is too hard is told with what to do about it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from generator.check.reading import easy_to_read, sentences_easy_to_read
from generator.model.places import Places
from generator.model.translation import Translation
from tests.project import GOOD, worked

HARD = "Considerable international deliberation necessitates extraordinary organisational collaboration"
SHORT = "Extraordinary organisational collaboration."


def told(folder: Path, sentence: str) -> str:
    text = GOOD
    for plain in ("Find the gap.", "Subtract.", "Look at the amounts.", "We will see."):
        text = text.replace(plain, f"'{sentence}'")
    (problem,) = easy_to_read(worked(folder, text))
    return problem.hint


def test_the_hardest_sentence_is_named(tmp_path: Path) -> None:
    assert told(tmp_path, f"{HARD}.") == f"shorten first: “{HARD}”"


def test_where_no_sentence_is_long_enough_to_be_named_it_asks_for_shorter_words(
    tmp_path: Path,
) -> None:
    """A hint that ended in a colon, with nothing behind it, named nothing."""
    assert told(tmp_path, SHORT) == "say it in shorter words"


LONG = "Everybody remembers several considerable differences between individual preparations."
NAMED = "The lunch of Oluwaseun and Anastasia is on the table in the little house."
HARDER = "The largest of these portions is somewhere between the smallest and the average."


def asked(folder: Path, sentence: str, **head: int) -> list[str]:
    text = GOOD.replace(
        "hint: Look at the amounts.", f"hint: |\n        Look.\n\n        {sentence}"
    )
    for key, value in head.items():
        text = text.replace("grades: 3-5", f"grades: 3-5\n{key}: {value}")
    return [str(problem) for problem in sentences_easy_to_read(worked(folder, text))]


def test_a_sentence_above_the_grades_is_named_at_its_own_line(tmp_path: Path) -> None:
    """The hint's second paragraph: line 16 of the file, column 9."""
    (problem,) = asked(tmp_path, LONG)
    assert problem.startswith(f"lessons/meal/lesson.yaml:16:9: “{LONG[:-1]}” reads like grade ")
    assert problem.endswith(
        "and the lesson aims at 5: make two sentences of it, or say it in shorter words"
    )


def test_the_grade_it_aims_at_is_the_educators_where_one_is_given(tmp_path: Path) -> None:
    assert asked(tmp_path, HARDER)
    assert asked(tmp_path, HARDER, reading_grade=12) == []


def test_short_sentences_and_those_a_grade_above_are_not_asked_about(tmp_path: Path) -> None:
    """By hand, 0.39 × 13 + 11.8 × 17 / 13 − 15.59 = 4.9; at most one grade above 4 is let through."""
    assert asked(tmp_path, "Extraordinary organisational collaboration helps.") == []
    plain = "The lemon on the table is sour, and the apple in the bag is sweet."
    longer = plain.replace("sweet", "yellow")
    assert asked(tmp_path, plain, reading_grade=4) == []
    assert asked(tmp_path, longer, reading_grade=2)


def test_names_are_not_hard_for_being_long(tmp_path: Path) -> None:
    """Names of people and places count as known: Dale and Chall 1948 (M)."""
    assert asked(tmp_path, NAMED, reading_grade=3) == []
    assert asked(tmp_path, NAMED.replace("Oluwaseun and Anastasia", "organization, anatomical"))


def test_the_lessons_own_foods_and_words_that_every_lesson_teaches_are_not_either(
    tmp_path: Path,
) -> None:
    assert (
        asked(
            tmp_path,
            "The oatmeal, the apple and the bagel hold energy and sodium here.",
            reading_grade=2,
        )
        == []
    )
    assert asked(
        tmp_path,
        "The battery, the animal and the lemon hold company and utility here.",
        reading_grade=2,
    )


def test_what_is_not_translated_yet_is_not_read_as_spanish(tmp_path: Path) -> None:
    result = worked(tmp_path, GOOD.replace("Look at the amounts.", LONG))
    places = Places("lessons/meal/lesson.es.yaml", {}, {})
    empty = Translation("es", {}, {}, places)
    spanish = replace(result.lesson, language="es", translations={"es": empty})
    assert list(sentences_easy_to_read(result))
    assert list(sentences_easy_to_read(replace(result, lesson=spanish))) == []
