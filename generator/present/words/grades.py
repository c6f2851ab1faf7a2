"""The school grades a lesson is for, in words."""

from __future__ import annotations

from generator.model.grades import GradeSpan
from generator.present.words.say import Say


def grades_in_words(grades: GradeSpan, say: Say) -> str:
    """``Grades 3–5`` or ``Grade 4``."""
    key = "meta_grade" if grades.first == grades.last else "meta_grades"
    return say(key, grades=str(grades).replace("-", "–"))
