"""What a learner reads is no harder than the lesson's grades: taken together, and each sentence."""

from __future__ import annotations

from collections.abc import Iterator

from generator.check.held_texts import HeldText, typed
from generator.check.rule import rule_of_words
from generator.compute.result import LessonResult
from generator.language import language_of
from generator.language.reading_level import names_in
from generator.model.lesson import Lesson
from generator.model.text_marks import For
from generator.model.texts import LessonText, lesson_texts
from generator.problems import Problem, Weight

_LEAST_WORDS = 8
"""Words of a sentence that is asked about: in a shorter one, one long word is more than a grade."""

_LEEWAY = 1
"""Grades that one sentence may lie above them: the formulas are made for whole texts (common practice, no source)."""


@rule_of_words
def easy_to_read(result: LessonResult) -> Iterator[Problem]:
    """A question when the learner's texts together lie above the lesson's reading grade.

    What is said aloud may be a little harder.
    """
    lesson = result.lesson
    formula = language_of(lesson.language).reading_level
    if formula is None:
        return
    whole = learner_text(lesson)
    known = known_words(result)
    found = formula.reading(whole, known)
    aim = reading_grade(lesson)
    if found and found.grade > aim:
        named = "; ".join(f"“{sentence}”" for sentence in formula.hardest(whole, known=known))
        # nothing but very short sentences: their words are the hard ones
        hint = f"shorten first: {named}" if named else "say it in shorter words"
        what = f"the learner's texts read like grade {found.grade}, and the lesson aims at {aim}"
        yield Problem(lesson.places.at("title"), what, hint, Weight.QUESTION)


@rule_of_words
def sentences_easy_to_read(result: LessonResult) -> Iterator[Problem]:
    """A question for each sentence of the learner's that by itself lies clearly above the lesson's grades."""
    lesson = result.lesson
    formula = language_of(lesson.language).reading_level
    if formula is None:
        return
    aim, known = reading_grade(lesson), known_words(result)
    for text in _translated(lesson):
        for one in formula.sentences(text.text, known):
            if one.words >= _LEAST_WORDS and one.reading.grade > aim + _LEEWAY:
                place, _ = text.spot(one.start)
                what = f"“{one.text}” reads like grade {one.reading.grade}, and the lesson aims at {aim}"
                hint = "make two sentences of it, or say it in shorter words"
                yield Problem(place, what, hint, Weight.QUESTION)


def reading_grade(lesson: Lesson) -> int:
    """The grade that the learner's texts may read like."""
    return lesson.file.reading_grade or max(lesson.file.grades.last, 3)


def learner_text(lesson: Lesson) -> str:
    """All sentences that a learner reads, a text a line; an entry of a list is a sentence too."""
    texts = [one.text for one in _learner_texts(lesson)]
    return "\n".join(
        text if text.rstrip().endswith((".", "?", "!")) else f"{text}." for text in texts
    )


def known_words(result: LessonResult) -> frozenset[str]:
    """Words in small letters that are no harder for being long: names, and the lesson's own foods."""
    texts = "\n".join(one.text for one in lesson_texts(result.lesson.file))
    foods = " ".join(held.name(result.lesson.language).words for held in result.holdings)
    plain = foods.translate(str.maketrans(",()", "   ")).lower().split()
    return names_in(texts) | frozenset(plain)


def _learner_texts(lesson: Lesson) -> Iterator[LessonText]:
    return lesson_texts(lesson.file, For.LEARNER_READS, prose=True)


def _translated(lesson: Lesson) -> Iterator[HeldText]:
    """What a learner reads in the lesson's language; a text that is not translated yet is left out."""
    translation = lesson.translations.get(lesson.language)
    for one in _learner_texts(lesson):
        if not translation or lesson.places.at(*one.path).path == translation.places.file:
            yield typed(lesson, one, language_of(lesson.language))
