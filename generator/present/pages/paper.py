"""The pages of a lesson that are printed: movement cards, worksheet and answer key."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import islice

from generator.compute.result import LessonResult
from generator.present.pages.lesson_page import meta_line
from generator.present.pages.page import Surround
from generator.present.pages.practice import practice_views
from generator.present.pictures.qr import qr_code
from generator.present.stops.kind import Paper
from generator.present.stops.kinds import kind_of
from generator.present.views.move_card import MoveCardView
from generator.present.views.page import LinkView
from generator.present.views.paper import CardSheetView, CardsView, SheetView, StopOnSheet
from generator.present.views.stop import StopView
from generator.present.words.care import before_moving
from generator.present.words.stamp import print_stamp

CARDS_A_SHEET = 4
PRACTICE_A_SHEET = 6


def cards_view(result: LessonResult, stops: tuple[StopView, ...], surround: Surround) -> CardsView:
    """The movement cards, four to a sheet."""
    address = surround.address(f"{result.lesson.id}/index.html")
    title = surround.say("cards_title")
    return CardsView(
        page=surround.page(
            f"{result.lesson.id}/cards.html", f"{title}: {result.lesson.file.title}", paper=True
        ),
        title=result.lesson.file.title,
        back=LinkView("index.html", surround.say("back_to_lesson")),
        sheets=_sheets(card for stop in stops for card in kind_of(stop).cards(stop)),
        before=before_moving(surround.say),
        qr=qr_code(address),
        address=address,
        stamp=print_stamp(result),
    )


def sheet_view(
    result: LessonResult, stops: tuple[StopView, ...], surround: Surround, *, answers: bool
) -> SheetView:
    """The worksheet, or the answer key with the same problems."""
    lesson, say = result.lesson, surround.say
    address = surround.address(f"{result.lesson.id}/index.html")
    name, title = (
        ("answers", say("answers_title")) if answers else ("worksheet", say("worksheet_title"))
    )
    return SheetView(
        page=surround.page(f"{lesson.id}/{name}.html", f"{title}: {lesson.file.title}", paper=True),
        title=lesson.file.title,
        meta=meta_line(lesson.file, say),
        back=LinkView("index.html", say("back_to_lesson")),
        answers=answers,
        stops=tuple(_on_sheet(stops)),
        practice=practice_views(result, say, PRACTICE_A_SHEET),
        qr=qr_code(address),
        address=address,
        stamp=print_stamp(result),
    )


def _on_sheet(stops: tuple[StopView, ...]) -> Iterator[StopOnSheet]:
    for stop in stops:
        paper = kind_of(stop).paper
        if paper is not Paper.LEFT_OUT:
            yield StopOnSheet(stop, whole=paper is Paper.WHOLE)


def _sheets(cards: Iterable[MoveCardView]) -> tuple[CardSheetView, ...]:
    every = iter(cards)
    fours = iter(lambda: tuple(islice(every, CARDS_A_SHEET)), ())
    return tuple(CardSheetView(four, number) for number, four in enumerate(fours, 1))
