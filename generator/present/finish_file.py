"""What the page for finish codes fetches of a lesson: its layout, and its stops and answers in words."""

from __future__ import annotations

import json
from collections.abc import Iterator

from generator.compute.answers import PARTING
from generator.compute.counted import AnswerKind, CountedAnswer
from generator.compute.counted_answers import answers_that_count
from generator.compute.finish_layout import finish_layout
from generator.compute.result import Comparison, LessonResult
from generator.model.names import TOTAL
from generator.model.text_marks import For
from generator.model.texts import LessonText, lesson_texts
from generator.present.stops.in_lesson import stop_names
from generator.present.views.notes import LikelyView
from generator.present.words.amounts import food_name
from generator.present.words.likely import count_likely, gap_likely
from generator.present.words.prose import plain
from generator.present.words.say import Say

FINISH_FILE = "finish.json"
"""Its name in the folder of a lesson, in each language."""


def finish_json(result: LessonResult, say: Say) -> str:
    """The file of a lesson in a language."""
    layout, headings, names = (
        finish_layout(result),
        stop_names(result, say),
        answer_names(result, say),
    )
    told = {
        "title": plain(result.lesson.file.title),
        "lesson": layout.lesson,
        "numbers": layout.numbers,
        "stops": [{"id": stop, "name": headings[stop]} for stop in layout.stops],
        "answers": [
            {
                "id": one.id,
                "stop": one.stop,
                "name": names[one.id],
                "likely": _likely(one, result, say),
            }
            for one in answers_that_count(result)
        ],
        "twice": [
            {"id": one.before, "name": headings[one.before], "again": at}
            for one, at in zip(layout.twice, layout.asked_again, strict=True)
        ],
    }
    return json.dumps(told, ensure_ascii=False, separators=(",", ":"))


def answer_names(result: LessonResult, say: Say) -> dict[str, str]:
    """By the id of each answer that counts, what it is called."""
    headings = stop_names(result, say)
    return {
        one.id: f"{headings[one.stop]}. {_row(one, comparison, say)}"
        if comparison
        else headings[one.stop]
        for one in answers_that_count(result)
        for comparison in (result.comparisons.get(one.stop),)
    }


def _likely(answer: CountedAnswer, result: LessonResult, say: Say) -> list[dict[str, str]]:
    """What to say of wrong answers, as the notes have it."""
    comparison = result.comparisons.get(answer.stop)
    if comparison is None:
        day = result.days.get(answer.stop)
        slips = gap_likely(day.balance.both, say) if day else ()
        return [*_sentences(slips), *_hint(answer, result)]
    return list(_of_row(answer, comparison, say))


def _row(answer: CountedAnswer, comparison: Comparison, say: Say) -> str:
    """``Row 2, the gap (Broth; Beans)``."""
    if answer.row == TOTAL:
        return say("finish_total")
    at = _at(answer, comparison)
    first, second = (plain(food_name(held, say)) for held in comparison.rows[at].sides)
    key = "finish_count" if answer.kind is AnswerKind.COUNT else "finish_gap"
    return say(key, number=at + 1, first=first, second=second)


def _of_row(answer: CountedAnswer, comparison: Comparison, say: Say) -> Iterator[dict[str, str]]:
    if answer.row == TOTAL:
        yield from _sentences(gap_likely(comparison.total, say))
        return
    at = _at(answer, comparison)
    gap = comparison.rows[at].gap
    if answer.kind is AnswerKind.COUNT:
        count = comparison.counts.rows[at] if comparison.counts else None
        yield from _sentences(count_likely(gap, count, say))
    else:
        yield from _sentences(gap_likely(gap, say))


def _at(answer: CountedAnswer, comparison: Comparison) -> int:
    return next(at for at, row in enumerate(comparison.rows) if row.id == answer.row)


def _sentences(likely: tuple[LikelyView, ...]) -> Iterator[dict[str, str]]:
    """Wrong answers, what each means, and what to say next."""
    for one in likely:
        yield {"answer": one.answer, "means": one.means, "says": one.say_next}


def _hint(answer: CountedAnswer, result: LessonResult) -> Iterator[dict[str, str]]:
    """The hint of a question; nothing where it has none."""
    hint = _hint_of(answer, result)
    if hint:
        yield {"answer": "", "means": "", "says": plain(hint)}


def _hint_of(answer: CountedAnswer, result: LessonResult) -> str | None:
    file, lesson = result.lesson.file, result.lesson
    if answer.stop == PARTING:
        return file.parting.hint if file.parting else None
    asks = {again: first for first, again in lesson.asked_again.items()}
    stop = asks.get(answer.stop, answer.stop)
    at = next(at for at, ids in enumerate(lesson.ids) if ids.stop == stop)
    texts: Iterator[LessonText] = lesson_texts(file, For.LEARNER_READS)
    return next((one.text for one in texts if one.stop == at and one.path[3:] == ("hint",)), None)
