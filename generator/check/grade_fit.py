"""Whether a lesson's numbers are those of its grades."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule
from generator.compute.result import LessonResult
from generator.compute.school_arithmetic import SUBTRACTING, Expected, asked_of
from generator.model.grades import Grades
from generator.problems import Problem, Weight

_OF_SUBTRACTING = {one.code for _, one in SUBTRACTING}


@rule
def numbers_fit_the_grades(result: LessonResult) -> Iterator[Problem]:
    """A question where arithmetic comes from beyond the last grade, or all gaps from far below the first."""
    grades, asked = result.lesson.file.grades, list(asked_of(result))
    hardest = max(asked, key=lambda one: one.grade, default=None)
    if hardest is None:
        return
    place = result.lesson.places.at("grades")
    if hardest.beyond(grades):
        what = f"the numbers ask for {_told(hardest)}, and the lesson's grades end at {_grade(grades.last)}"
        hint = (
            f"choose numbers that ask for less, or let `grades:` reach to {_grade(hardest.grade)}"
        )
        yield Problem(place, what, hint, Weight.QUESTION)
    gaps = [one for one in asked if one.code in _OF_SUBTRACTING]
    most = max(gaps, key=lambda one: one.last_grade, default=None)
    if most and len(gaps) == _subtractions(asked) and most.far_below(grades):
        what = f"every gap asks for no more than {_told(most)}, far below the lesson's first grade, {_grade(grades.first)}"
        yield Problem(place, what, _lower(most, grades), Weight.QUESTION)


def _subtractions(asked: list[Expected]) -> int:
    return sum(one.what.startswith("subtracting") for one in asked)


def _lower(most: Expected, grades: Grades) -> str:
    first = most.last_grade + 1
    return f"choose larger numbers, or let `grades:` begin at {_grade(first)}: {_grade(first)}-{_grade(grades.last)}"


def _told(one: Expected) -> str:
    return f"{one.what} (grade {_grade(one.grade)}, {one.code})"


def _grade(number: int) -> str:
    return str(number) if number else "K"
