"""The family sheet: what a lesson found out, on one sheet to take home."""

from __future__ import annotations

from collections.abc import Iterator

from generator.compute.result import Comparison, Day, LessonResult, Row
from generator.model.measure import Measure
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import meta_line
from generator.present.pages.paper import lesson_address, plums_of
from generator.present.papers.again import Again, again_of
from generator.present.papers.at_home import talks_at_home
from generator.present.pictures.qr import qr_code
from generator.present.stops.in_lesson import stop_names
from generator.present.views.family import FamilyView, FoundView
from generator.present.words.amounts import gap_sentence, portion
from generator.present.words.care import before_moving, care_of_foods
from generator.present.words.day import leaning, who
from generator.present.words.families import ABOUT
from generator.present.words.say import Say


def family_view(told: PageInLesson) -> FamilyView:
    """Everything the family sheet shows."""
    result, say, address = told.result, told.surround.say, lesson_address(told)
    again = again_of(result, say)
    moves = bool(result.moved)
    return FamilyView(
        title=result.lesson.file.title,
        meta=meta_line(result.lesson.file, say),
        intro=(say("family_intro"), say("family_moved")) if moves else (say("family_intro"),),
        plums=plums_of(told),
        found=tuple(_found(result, again, say)),
        left_for_below=say("family_left") if again.of else "",
        again=again.view,
        talks=talks_at_home(told.stops, say),
        care=(*care_of_foods(result, say), say("care_numbers")),
        before=before_moving(say) if moves else (),
        qr=qr_code(address),
        address=address,
    )


def _found(result: LessonResult, again: Again, say: Say) -> Iterator[FoundView]:
    """What each comparison and each day came to; what a measure is stands there once."""
    told: set[Measure] = set()
    for stop, name in stop_names(result, say).items():
        match result.worked.get(stop):
            case Comparison() as one:
                lines, measure = tuple(_lines(one, again.of, say)), one.stop.measure
                if lines:
                    about = "" if measure in told else say(ABOUT.key(measure))
                    yield FoundView(name, about, lines)
                    told.add(measure)
            case Day() as one if one is not again.of:
                yield FoundView(name, who(one.stop.person, say), (leaning(one.balance, say),))


def _lines(one: Comparison, again: Row | Day | None, say: Say) -> Iterator[str]:
    """A line for each row but the one to find again, and one for all rows together."""
    for row in one.rows:
        if row is not again:
            yield _row(row, one, say)
    if len(one.rows) > 1:
        says = gap_sentence(one.total, one.stop.sides, one.stop.measure, say)
        yield say("family_total", says=says)


def _row(row: Row, one: Comparison, say: Say) -> str:
    first, second = (portion(held, say) for held in row.sides)
    says = gap_sentence(row.gap, one.stop.sides, one.stop.measure, say)
    return say("family_row", first=first, second=second, says=says)
