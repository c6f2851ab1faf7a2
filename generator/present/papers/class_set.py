"""A class set: the lesson's worksheet once for each child, with practice of its own, and one key for all."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from generator.compute.practice_set import SIZES, plan_of
from generator.present.pages.in_lesson import PageInLesson
from generator.present.pages.paper import answers_view, worksheet_view
from generator.present.pages.practice import practice_views
from generator.present.views.paper import SheetView
from generator.present.views.practice import PracticeView

__all__ = ["MOST", "SIZES", "ClassSet", "class_key", "class_sheets"]

MOST = 100
"""Sheets of a set; ours, no source: no class is larger, and a slip of the finger makes no thousand."""
_PROBLEMS = 5
"""Practice problems on a sheet: gaps, counts and an even row; a sheet of paper more would be needed for the next."""


@dataclass(frozen=True, slots=True)
class ClassSet:
    """A worksheet for each child of a class."""

    children: int
    seed: str = ""
    """Of their practice; empty for each lesson's own."""
    largest: int = 0
    """No number of their practice is larger; 0 for the size of each lesson's own numbers."""

    def seed_of(self, number: int, told: PageInLesson) -> str:
        """The seed of one sheet: the practice page makes the same problems of it."""
        return f"{self.seed or told.result.lesson.first_id}-{number}"

    @property
    def numbers(self) -> range:
        """Of the sheets."""
        return range(1, self.children + 1)


@dataclass(frozen=True, slots=True)
class ClassSheetView:
    """The worksheet of one child; it bears a number and no name."""

    title: str
    number: int
    found: str
    """What the practice page calls the same problems."""
    sheet: SheetView


@dataclass(frozen=True, slots=True)
class NumberedPractice:
    """The practice of one sheet, with its answers."""

    number: int
    practice: tuple[PracticeView, ...]


@dataclass(frozen=True, slots=True)
class ClassKeyView:
    """The key of a class: the lesson's answers once, and the practice of every sheet."""

    title: str
    sheet: SheetView
    numbered: tuple[NumberedPractice, ...]


def class_sheets(told: PageInLesson, wanted: ClassSet) -> Iterator[ClassSheetView]:
    """The worksheets in the order of their numbers."""
    sheet = worksheet_view(told)
    for number in wanted.numbers:
        one = replace(sheet, practice=_practice(told, wanted, number))
        found = _found(told, wanted, number)
        yield ClassSheetView(sheet.title, number, found, one)


def class_key(told: PageInLesson, wanted: ClassSet) -> ClassKeyView:
    """The key of all of them."""
    sheet = replace(answers_view(told), practice=())
    numbered = tuple(
        NumberedPractice(number, _practice(told, wanted, number)) for number in wanted.numbers
    )
    return ClassKeyView(sheet.title, sheet, numbered)


def _practice(told: PageInLesson, wanted: ClassSet, number: int) -> tuple[PracticeView, ...]:
    seed, say = wanted.seed_of(number, told), told.surround.say
    return practice_views(told.result, say, _PROBLEMS, seed, wanted.largest)


def _found(told: PageInLesson, wanted: ClassSet, number: int) -> str:
    say = told.surround.say
    largest = say.number(wanted.largest or plan_of(told.result).largest)
    size = say("practice_size", largest=largest)
    return say("class_set_seed", seed=wanted.seed_of(number, told), size=size)
