"""Practice problems of a lesson: a page of their own, and the same problems on the worksheet."""

from __future__ import annotations

from generator.compute.practice import LARGEST, practice_problems
from generator.compute.result import LessonResult
from generator.present.pages.in_lesson import PageInLesson
from generator.present.views.practice import PracticePageView, PracticeView, SizeView
from generator.present.words.foreign import joined
from generator.present.words.say import Say
from generator.present.words.stamp import print_stamp

PROBLEMS_A_PAGE = 12


def practice_view(told: PageInLesson) -> PracticePageView:
    """The practice page of a lesson."""
    result, say = told.result, told.surround.say
    lesson = result.lesson
    own = LARGEST[lesson.file.grades.band]
    return PracticePageView(
        page=told.page,
        title=joined(": ", (say("practice_title"), lesson.file.title)),
        back=told.links.lesson,
        seed=lesson.id,
        sizes=tuple(
            SizeView(largest, say("practice_size", largest=say.number(largest)), largest == own)
            for largest in LARGEST.values()
        ),
        problems=practice_views(result, say, PROBLEMS_A_PAGE),
        stamp=print_stamp(result),
    )


def practice_views(result: LessonResult, say: Say, number: int) -> tuple[PracticeView, ...]:
    """The first problems of the lesson's own seed and number size."""
    largest = LARGEST[result.lesson.file.grades.band]
    problems = practice_problems(result.lesson.id, largest, PROBLEMS_A_PAGE)
    return tuple(
        PracticeView(
            number=place,
            says=f"{say.number(problem.larger)} − {say.number(problem.smaller)} =",
            answer=say.number(problem.gap),
            larger_number=str(problem.larger),
            smaller_number=str(problem.smaller),
        )
        for place, problem in enumerate(problems[:number], 1)
    )
