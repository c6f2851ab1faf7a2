"""The teaching notes of a lesson: everything a teacher with five minutes needs."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.likely import likely_answers
from generator.compute.result import Comparison, LessonResult
from generator.present.pages.lesson_page import downloads, meta_line
from generator.present.pages.page import Surround
from generator.present.views.notes import (
    AnswerView,
    LikelyView,
    NotesView,
    PlanView,
    StopSourcesView,
)
from generator.present.views.page import LinkView
from generator.present.views.stop import StopView
from generator.present.views.stops import (
    AskView,
    CompareView,
    DayView,
    MoveView,
    TalkView,
    WatchView,
)
from generator.present.words.care import allergen_line, care_lines
from generator.present.words.count_truth import count_truths
from generator.present.words.prose import inline
from generator.present.words.say import Say
from generator.present.words.stamp import print_stamp


def notes_view(result: LessonResult, stops: tuple[StopView, ...], surround: Surround) -> NotesView:
    """Everything the teaching notes show."""
    lesson, say = result.lesson, surround.say
    file = lesson.file
    title = say("notes_title")
    compares = tuple(stop for stop in stops if isinstance(stop, CompareView))
    return NotesView(
        page=surround.page(f"{lesson.id}/notes.html", f"{title}: {file.title}"),
        title=file.title,
        meta=meta_line(result, say),
        back=LinkView("index.html", say("back_to_lesson")),
        summary=inline(file.summary),
        goals=file.goals,
        standards=tuple((code, _standard(code, surround)) for code in file.standards),
        you_need=file.you_need,
        plan=_plan(stops, say),
        answers=tuple(
            answer
            for view in compares
            for answer in _answers(view, result.comparisons[view.head.id], say)
        ),
        talks=tuple(stop for stop in stops if isinstance(stop, TalkView)),
        count_truth=count_truths(result, say),
        adaptations=tuple(
            say(f"adapt_{name}")
            for name in ("seated", "space", "smaller", "larger", "language", "appetite")
        ),
        care=care_lines(result, say),
        allergens=allergen_line(result, say),
        sources=tuple(
            StopSourcesView(stop.head.id, stop.head.heading, stop.sources)
            for stop in stops
            if isinstance(stop, CompareView | DayView)
        ),
        days=bool(result.days),
        downloads=downloads(result, say),
        stamp=print_stamp(result),
    )


def _standard(code: str, surround: Surround) -> str:
    known = surround.site.standards.get(code)
    return known.says if known else ""


def _plan(stops: tuple[StopView, ...], say: Say) -> tuple[PlanView, ...]:
    return tuple(
        PlanView(
            stop.head.at.text if stop.head.at else "",
            stop.head.heading,
            _does(stop, say),
            f"index.html#{stop.head.id}",
        )
        for stop in stops
    )


def _does(stop: StopView, say: Say) -> str:
    """What a class does at a stop."""
    match stop:
        case WatchView():
            return stop.says
        case AskView():
            return say("plan_ask")
        case CompareView():
            return say("plan_compare", n=len(stop.rows), measure=stop.measure)
        case MoveView():
            return say("plan_move", n=len(stop.cards))
        case TalkView():
            return say("plan_talk")
        case DayView():
            return say("plan_day")
        case _:
            raise TypeError(f"no plan is written for {type(stop).__name__}")


def _answers(view: CompareView, comparison: Comparison, say: Say) -> Iterator[AnswerView]:
    for row, worked in zip(view.rows, comparison.rows, strict=True):
        likely = tuple(
            LikelyView(say.number(answer), say(f"mistake_{mistake}"))
            for answer, mistake in likely_answers(worked.gap)
        )
        yield AnswerView(row.legend, row.working.lines, row.working.says, likely)
    if view.total:
        yield AnswerView(say("total"), view.total.working.lines, view.total.working.says, ())
