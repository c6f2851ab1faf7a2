"""What a teacher says and asks: questions of maths, sentence frames and words, as far as a lesson needs them."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.result import LessonResult
from generator.present.words.say import Say


def key_questions(result: LessonResult, say: Say) -> tuple[str, ...]:
    """Questions about how it was found, for what the lesson works out."""
    return tuple(_questions(result, say))


def sentence_frames(result: LessonResult, say: Say) -> tuple[str, ...]:
    """Sentences with gaps to fill, for children who learn the language of the lesson."""
    return tuple(_frames(result, say))


def words_to_know(result: LessonResult, say: Say) -> tuple[tuple[str, str], ...]:
    """Words of the lesson's arithmetic, each explained in one line."""
    return tuple(_words(result, say))


def _questions(result: LessonResult, say: Say) -> Iterator[str]:
    if result.comparisons or result.days:
        yield say("question_gap")
        yield say("question_larger")
    if _adds(result):
        yield say("question_total")
    if result.movements:
        yield say("question_count")
    if result.days:
        yield say("question_day")


def _frames(result: LessonResult, say: Say) -> Iterator[str]:
    if result.comparisons:
        yield say("frame_more")
    if result.comparisons or result.days:
        yield say("frame_counted_up")
        yield say("frame_took_away")
    if result.movements:
        yield say("frame_count")


def _words(result: LessonResult, say: Say) -> Iterator[tuple[str, str]]:
    if result.comparisons or result.days:
        yield say("word_gap"), say("word_gap_is")
        yield say("word_digit"), say("word_digit_is")
        yield say("word_ten"), say("word_ten_is")
    if _adds(result):
        yield say("word_sum"), say("word_sum_is")
    if result.movements:
        yield say("word_count"), say("word_count_is")
        yield say("word_left_over"), say("word_left_over_is")


def _adds(result: LessonResult) -> bool:
    return bool(result.days) or any(len(one.rows) > 1 for one in result.comparisons.values())
