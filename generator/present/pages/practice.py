"""Practice problems of a lesson: a page of their own, and the same problems on the worksheet."""

from __future__ import annotations

from dataclasses import replace

from generator.compute.practice_set import SIZES, Kind, Problem, plan_of, practice_set
from generator.compute.result import LessonResult
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.page import Surround
from generator.present.views.page import LinkView
from generator.present.views.practice import PracticePageView, PracticeView, SizeView
from generator.present.words.foreign import joined
from generator.present.words.say import Say

PRACTICE = "practice.html"
"""The page's name in its lesson's folder."""
PROBLEMS_A_PAGE = 12
LEAST_LARGE = 3000
"""Sizes above it are offered only where they are the lesson's own."""


def practice_view(told: PageInLesson) -> PracticePageView:
    """The practice page of a lesson."""
    result, say = told.result, told.surround.say
    lesson, plan = result.lesson, plan_of(result)
    return PracticePageView(
        page=told.page,
        title=joined(": ", (say("practice_title"), lesson.file.title)),
        back=told.links.lesson,
        lesson=lesson.id,
        seed=lesson.first_id,
        per=plan.per,
        sizes=tuple(
            SizeView(
                largest, say("practice_size", largest=say.number(largest)), largest == plan.largest
            )
            for largest in SIZES
            if largest in (plan.largest, *(one for one in SIZES if one <= LEAST_LARGE))
        ),
        problems=practice_views(result, say, PROBLEMS_A_PAGE),
        another_day=_another_day(told.surround),
    )


def _another_day(surround: Surround) -> LinkView | None:
    """Numbers met before are met again: practice spread over days holds longer (common practice, no source)."""
    before = surround.neighbours.before
    if before is None:
        return None
    return LinkView(f"{surround.folder}{before.id}/{PRACTICE}", before.title)


def practice_views(
    result: LessonResult, say: Say, number: int, seed: str = "", largest: int = 0
) -> tuple[PracticeView, ...]:
    """The first problems of a seed, or of the lesson's own, with its step of counting.

    Args:
        result: the lesson.
        say: the words of its language.
        number: how many.
        seed: empty for the lesson's own.
        largest: no number is larger; 0 for the size of the lesson's own numbers.
    """
    own = plan_of(result)
    plan = replace(own, largest=largest or own.largest)
    problems = practice_set(seed or result.lesson.first_id, plan, PROBLEMS_A_PAGE)
    return tuple(
        PracticeView(
            number=place,
            kind=problem.kind,
            says=_says(problem, say),
            answer=_answer(problem, say),
            first=str(problem.first),
            second=str(problem.second),
        )
        for place, problem in enumerate(problems[:number], 1)
    )


def _says(problem: Problem, say: Say) -> str:
    first, second = say.number(problem.first), say.number(problem.second)
    if problem.kind is Kind.WHICH:
        return say("practice_which", first=first, second=second)
    sign = "÷" if problem.kind is Kind.COUNT else "−"
    return say.from_left(f"{first} {sign} {second} =")


def _answer(problem: Problem, say: Say) -> str:
    gap = problem.first - problem.second
    if problem.kind is Kind.GAP:
        return say.number(gap)
    if problem.kind is Kind.COUNT:
        whole, left = divmod(problem.first, problem.second)
        return say.number(whole) + say("left_over_after", left=say.number(left))
    if gap > 0:
        return say("practice_first_more", gap=say.number(gap))
    return say("practice_second_more", gap=say.number(-gap))
