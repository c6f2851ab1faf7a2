"""The pages of a lesson that are printed: movement cards, worksheet and answer key."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import islice
from math import ceil

from markupsafe import Markup

from generator.compute.more_moves import more_moves
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.lesson_page import meta_line
from generator.present.pages.parting import parting_view
from generator.present.pages.practice import practice_views
from generator.present.pictures.plums.drawing import FLAT, drawn
from generator.present.pictures.plums.hung import hung
from generator.present.pictures.plums.svg import plums_in_page
from generator.present.pictures.qr import qr_code
from generator.present.stops.in_lesson import in_lesson
from generator.present.stops.kind import Paper
from generator.present.stops.kinds import kind_of
from generator.present.stops.library_move import library_moves
from generator.present.views.notes import AnswerView
from generator.present.views.paper import (
    CardOnSheet,
    CardSheetView,
    CardsView,
    SheetView,
    StopOnSheet,
)
from generator.present.views.stop import StopView
from generator.present.words.care import allergen_line, before_moving
from generator.present.words.hung import hung_in_words
from generator.present.words.teaching import sentence_frames

CARDS_A_SHEET = 4
PRACTICE_A_SHEET = 3
LIKELY_A_ROW = 2
"""Wrong answers told on the key for each row: an adult beside a child takes in no more."""


def cards_view(told: PageInLesson) -> CardsView:
    """The movement cards, four to a sheet, or fewer and larger where that takes no more sheets."""
    cards = [
        CardOnSheet(card, qr_code(lesson_address(told, stop)))
        for stop in told.stops
        for card in kind_of(stop).cards(stop)
    ]
    a_sheet = cards_a_sheet(len(cards))
    return CardsView(
        page=told.page,
        title=told.result.lesson.file.title,
        back=told.links.lesson,
        a_sheet=a_sheet,
        sheets=_sheets(cards, a_sheet),
        before=(*before_moving(told.surround.say), allergen_line(told.result, told.surround.say)),
        more=library_moves(more_moves(told.result), told.surround.say),
    )


def worksheet_view(told: PageInLesson) -> SheetView:
    """The worksheet, with room for answers."""
    return _sheet(told, answers=False)


def answers_view(told: PageInLesson) -> SheetView:
    """The answer key: the same problems with their answers."""
    return _sheet(told, answers=True)


def _sheet(told: PageInLesson, *, answers: bool) -> SheetView:
    say, address = told.surround.say, lesson_address(told)
    return SheetView(
        page=told.page,
        title=told.result.lesson.file.title,
        meta=meta_line(told.result.lesson.file, say),
        back=told.links.lesson,
        plums=plums_of(told),
        answers=answers,
        stops=tuple(_on_sheet(told, answers=answers)),
        parting=parting_view(told.result, say),
        practice=practice_views(told.result, say, PRACTICE_A_SHEET),
        frames=() if answers else sentence_frames(told.result, say),
        qr=qr_code(address),
        address=address,
        typed=address.partition("://")[2].removesuffix("index.html"),
    )


def plums_of(told: PageInLesson) -> Markup:
    """A lesson's gaps as plums, without numbers; empty where it compares nothing."""
    rows, say = hung(told.result), told.surround.say
    if not rows:
        return Markup("")
    return plums_in_page(drawn(rows, FLAT), hung_in_words([row.share for row in rows], say))


def lesson_address(told: PageInLesson, stop: StopView | None = None) -> str:
    """Where the lesson, or a stop of it, is published: paper leads back to it."""
    address = told.surround.address(f"{told.result.lesson.id}/index.html")
    return f"{address}#{stop.head.id}" if address and stop else address


def _on_sheet(told: PageInLesson, *, answers: bool) -> Iterator[StopOnSheet]:
    for index, stop in enumerate(told.stops):
        kind = kind_of(stop)
        if kind.paper is not Paper.LEFT_OUT:
            likely = tuple(_likely(told, index)) if answers else ()
            yield StopOnSheet(stop, whole=kind.paper is Paper.WHOLE, likely=likely)


def _likely(told: PageInLesson, index: int) -> Iterator[AnswerView]:
    """The likeliest wrong answers of each question; all of them stand in the teaching notes."""
    stop = told.stops[index]
    for answer in kind_of(stop).answers(in_lesson(index, told.result, told.surround.say), stop):
        if answer.likely:
            yield replace(answer, likely=answer.likely[:LIKELY_A_ROW])


def cards_a_sheet(cards: int) -> int:
    """How many parts each sheet has: the fewest that take no more sheets than four would."""
    sheets = ceil(cards / CARDS_A_SHEET)
    return min(
        (n for n in range(1, CARDS_A_SHEET) if ceil(cards / n) == sheets), default=CARDS_A_SHEET
    )


def _sheets(cards: Iterable[CardOnSheet], a_sheet: int) -> tuple[CardSheetView, ...]:
    every = iter(cards)
    parts = iter(lambda: tuple(islice(every, a_sheet)), ())
    return tuple(CardSheetView(part, number) for number, part in enumerate(parts, 1))
