"""What a learner reads is no harder than the lesson's grades."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.rule import rule_of_words
from generator.compute.result import LessonResult
from generator.language import language_of
from generator.model.text_marks import For
from generator.model.texts import lesson_texts
from generator.problems import Problem, Weight


@rule_of_words
def easy_to_read(result: LessonResult) -> Iterator[Problem]:
    """A question when the learner's texts together lie above the lesson's reading grade.

    What is said aloud may be a little harder.
    """
    lesson = result.lesson
    formula = language_of(lesson.language).reading_level
    if formula is None:
        return
    texts = [one.text for one in lesson_texts(lesson.file, For.LEARNER_READS, prose=True)]
    whole = "\n".join(
        text if text.rstrip().endswith((".", "?", "!")) else f"{text}." for text in texts
    )
    found = formula.reading(whole)
    aim = lesson.file.reading_grade or max(lesson.file.grades.last, 3)
    if found and found.grade > aim:
        named = "; ".join(f"“{sentence}”" for sentence in formula.hardest(whole))
        # nothing but very short sentences: their words are the hard ones
        hint = f"shorten first: {named}" if named else "say it in shorter words"
        what = f"the learner's texts read like grade {found.grade}, and the lesson aims at {aim}"
        yield Problem(lesson.places.at("title"), what, hint, Weight.QUESTION)
