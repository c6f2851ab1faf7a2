"""The teaching notes of a lesson: everything a teacher with five minutes needs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from generator.compute.answers import PARTING
from generator.compute.result import LessonResult
from generator.present.pages.cartridges import lesson_cartridges
from generator.present.pages.class_lines import class_lines
from generator.present.pages.class_link import class_link_view
from generator.present.pages.codes import CODES
from generator.present.pages.embed import snippets
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import meta_line
from generator.present.pages.minutes import stop_minutes
from generator.present.pages.notes_parts import notes_parts
from generator.present.pages.page import Surround
from generator.present.pages.parting import parting_answer
from generator.present.stops.in_lesson import in_lesson
from generator.present.stops.kinds import kind_of
from generator.present.updates.paths import UPDATES
from generator.present.views.notes import (
    AnswerView,
    LookForView,
    NeighbourView,
    NotesView,
    PlanView,
    StopSourcesView,
)
from generator.present.views.stop import StopView
from generator.present.words.adaptations import adaptations
from generator.present.words.brings import brings_views
from generator.present.words.care import care_of_foods
from generator.present.words.count_truth import count_says, count_sources, count_truths, count_why
from generator.present.words.day_need import day_needs
from generator.present.words.prose import inline
from generator.present.words.reviewed import reviewed_views
from generator.present.words.say import Say
from generator.present.words.standards import standard_words
from generator.present.words.teaching import key_questions, sentence_frames, words_to_know


def notes_view(told: PageInLesson) -> NotesView:
    """Everything the teaching notes show."""
    result, stops, surround = told.result, told.stops, told.surround
    lesson, say = result.lesson, surround.say
    file = lesson.file
    minutes = stop_minutes(result, stops)
    plan = tuple(_plan(stops, told.links.lesson.href, minutes, say))
    view = NotesView(
        page=told.page,
        title=file.title,
        meta=meta_line(file, say),
        back=told.links.lesson,
        whole_class=told.links.whole_class,
        codes=surround.folder + CODES,
        updates=surround.folder + UPDATES,
        class_link=class_link_view(told),
        summary=inline(file.summary),
        goals=file.goals,
        standards=tuple((code, _standard(code, surround)) for code in file.standards),
        you_need=file.you_need,
        plan=plan,
        minutes=say.number(file.minutes),
        for_class=class_lines(result, [line.heading for line in plan], minutes, say),
        answers=(*_answers(result, stops, say), *parting_answer(result, say)),
        look_for=tuple(_look_for(result, stops, say)),
        questions=key_questions(result, say),
        frames=sentence_frames(result, say),
        words=words_to_know(result, say),
        talks=tuple(one for stop in stops for one in kind_of(stop).discussion(stop)),
        count_says=count_says(result, say),
        count_why=count_why(result, say),
        count_truth=count_truths(result, say),
        count_from=count_sources(result, say),
        adaptations=adaptations(result, say),
        neighbours=tuple(_neighbours(surround)),
        care=care_of_foods(result, say),
        reviewed=reviewed_views(result, say),
        sources=tuple(_sources(stops, told.links.lesson.href)),
        brings=brings_views(result.holdings, say),
        day_needs=day_needs(result, say),
        downloads=told.links.paper,
        cartridges=lesson_cartridges(lesson.id, surround),
        snippets=snippets(told),
        address=surround.address(f"{lesson.id}/index.html"),
    )
    return replace(view, contents=notes_parts(view, say))


def _standard(code: str, surround: Surround) -> str:
    site = surround.site
    known = site.standards.get(code)
    return standard_words(known, surround.say.language, site.languages[0]) if known else ""


def _plan(
    stops: tuple[StopView, ...], lesson: str, minutes: tuple[int, ...], say: Say
) -> Iterator[PlanView]:
    """A line for each stop, and for a parting question after them."""
    for stop, taken in zip(stops, minutes, strict=False):
        head, at = stop.head, stop.head.at.text if stop.head.at else ""
        does = kind_of(stop).plan(stop, say)
        yield PlanView(at, head.heading, does, f"{lesson}#{head.id}", say.number(taken))
    for taken in minutes[len(stops) :]:
        title, does = say("parting_title"), say("plan_ask_number")
        yield PlanView("", title, does, f"{lesson}#{PARTING}", say.number(taken))


def _answers(result: LessonResult, stops: tuple[StopView, ...], say: Say) -> Iterator[AnswerView]:
    for index, view in enumerate(stops):
        yield from kind_of(view).answers(in_lesson(index, result, say), view)


def _neighbours(surround: Surround) -> Iterator[NeighbourView]:
    say, both = surround.say, surround.neighbours
    for key, one in (("notes_before", both.before), ("notes_after", both.after)):
        if one:
            needs = say("notes_needs", needs=one.arithmetic) if one.arithmetic else ""
            href = f"{surround.folder}{one.id}/index.html"
            yield NeighbourView(href, one.title, say(key), needs)


def _look_for(result: LessonResult, stops: tuple[StopView, ...], say: Say) -> Iterator[LookForView]:
    """Signs of each stop, none twice on a page."""
    seen: set[str] = set()
    for index, view in enumerate(stops):
        told = in_lesson(index, result, say)
        lines = tuple(one for one in kind_of(view).look_for(told) if one not in seen)
        seen.update(lines)
        if lines:
            yield LookForView(view.head.heading, lines)


def _sources(stops: tuple[StopView, ...], lesson: str) -> Iterator[StopSourcesView]:
    """Stops that have none are left out; what a stop shows itself is not said twice."""
    for stop in stops:
        kind, head = kind_of(stop), stop.head
        if sources := kind.sources(stop):
            shown = kind.sources_on_page
            href = f"{lesson}#{head.id}" if shown else ""
            yield StopSourcesView(head.id, head.heading, href, () if shown else sources)
