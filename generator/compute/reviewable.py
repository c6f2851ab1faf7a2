"""What of a lesson somebody can read and stand up for: its numbers, its texts, and what follows from it for care.

Numbers and texts are known by what they are of and where they stand, never by their place in a row
or a list: what only moves was read already.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal

from generator.compute.changed import WhatIf
from generator.compute.figure import Figure
from generator.compute.holding import Holding
from generator.compute.result import (
    Answer,
    ChosenAnswer,
    Comparison,
    LessonResult,
    NumberAnswer,
    WorkedStop,
)
from generator.model.figure import FigureKind
from generator.model.food import NOT_LOOKED_AT, Food
from generator.model.lesson import Lesson
from generator.model.names import TOTAL
from generator.model.places import Path
from generator.model.reviewed import ReadNumber
from generator.model.stops.ask import AskStop
from generator.model.texts import LessonText, lesson_texts
from generator.model.translation import text_mark

MOVES_AT = "moves-at-"
"""How the fact begins that says which move counts which row of a stop."""
_OF_THE_DAY = frozenset({FigureKind.EATEN, FigureKind.NEEDED})


@dataclass(frozen=True, slots=True)
class ReadText:
    """A text of a lesson, as a reader knows it again."""

    name: str
    """Where it stands, by names: ``title``, ``guess.prompt``, ``moves.march``."""
    mark: str
    """Six signs of its words."""
    path: Path = ()
    """In the lesson file; nothing for a text of the library."""


@dataclass(frozen=True, slots=True)
class Reviewable:
    """All there is to read of a lesson in one language."""

    numbers: Mapping[str, ReadNumber]
    """By their names in the ledger, in its order."""
    texts: tuple[ReadText, ...]
    """In the order of the lesson file, those of its moves last."""
    facts: Mapping[str, str]
    """What else follows from the lesson file, by name."""


def reviewable(result: LessonResult) -> Reviewable:
    """What there is to read of a lesson in the language of its result."""
    return Reviewable(
        {figure.id: _number(figure, result) for figure in result.figures},
        (*_texts(result.lesson), *_moves(result)),
        dict(_facts(result)),
    )


def _number(figure: Figure, result: LessonResult) -> ReadNumber:
    """A number with all that would make it another one."""
    return ReadNumber.model_construct(
        kind=figure.kind,
        value=Decimal(f"{figure.value.normalize():f}"),
        unit=str(figure.unit),
        of=_of(figure, result),
    )


def _of(figure: Figure, result: LessonResult) -> str:
    worked = result.worked.get(figure.stop)
    foods = [_food(held) for held in figure.foods or _estimated(figure, worked)]
    if figure.row == TOTAL or figure.kind is FigureKind.EATEN:
        foods.sort()  # rows that change places leave a sum as it is
    found = []
    match worked:
        case Comparison() if figure.side is not None:
            found.append(worked.side_ids[figure.side])
        case WhatIf() if figure.side is not None:
            found.append(worked.comparison.side_ids[figure.side])
    day = result.days.get(figure.stop)
    if day and figure.kind in _OF_THE_DAY:
        person = day.stop.person
        found.append(f"{person.name}, {person.age}, {person.sex}, {person.activity}")
    if figure.kind is FigureKind.ANSWER:
        found += _answered(result.answers.get(figure.stop))
    named = [figure.change, figure.move, *found, " + ".join(foods)]
    return ": ".join(one for one in named if one) or str(figure.measure)


def _estimated(figure: Figure, worked: WorkedStop | None) -> tuple[Holding, ...]:
    """The foods of the row that a number is of which names none itself."""
    rows = worked.rows if isinstance(worked, Comparison) else ()
    return next((row.sides for row in rows if row.id == figure.row), ())


def _answered(answer: Answer | None) -> Iterator[str]:
    """What answers a question: the food or side that is right, or the numbers it is worked out from."""
    if isinstance(answer, ChosenAnswer):
        right = answer.options[answer.right]
        yield _food(right) if isinstance(right, Holding) else f"side {right + 1}"
    elif isinstance(answer, NumberAnswer):
        # without the stops, which may be called otherwise one day
        yield ", ".join(name.partition(".")[2] for name in answer.names)


def _food(held: Holding) -> str:
    record = f" (FDC {held.food.entry.fdc})" if held.food else ""
    return f"{held.id}{f', {held.item.amount}' if held.item.amount else ''}{record}"


def _texts(lesson: Lesson) -> Iterator[ReadText]:
    """The texts of the lesson file that are there in its language, as they were written."""
    for one in lesson_texts(lesson.file):
        if one.mark.translated and one.text.strip() and _is_there(lesson, one):
            filling = lesson.fillings.get(one.path)
            words = filling.written if filling else one.text
            yield ReadText(_name(lesson, one), text_mark(words), one.path)


def _is_there(lesson: Lesson, one: LessonText) -> bool:
    """Whether a text is of the lesson's own language, or its translation has it."""
    translation = lesson.translations.get(lesson.language)
    return translation is None or lesson.places.at(*one.path).path == translation.places.file


def _name(lesson: Lesson, one: LessonText) -> str:
    """Where a text stands by names alone, and whether it is the right one of some choices."""
    if one.mark.by_words:
        return "foods"
    if one.stop is None:
        return ".".join(part for part in one.path if isinstance(part, str))
    keys = [part for part in one.path[3:] if isinstance(part, str)]
    name = ".".join([lesson.stop_id(one.stop), *keys])
    stop = lesson.file.stops[one.stop]
    right = isinstance(stop, AskStop) and one.path[3:5] == ("choices", stop.right_choice)
    return f"{name}.right" if right else name


def _moves(result: LessonResult) -> Iterator[ReadText]:
    """What a family reads about each move that is done, as one text."""
    for name, move in {one.move_id: one.move for one in result.moved}.items():
        words = move.text(result.lesson.language).words
        every = (words.name, words.count_is, *words.steps, words.seated, words.care)
        yield ReadText(f"moves.{name}", text_mark("\n".join(every)))


def _facts(result: LessonResult) -> Iterator[tuple[str, str]]:
    """What care says of this lesson's foods, and which move counts which row."""
    foods = {held.food.id: held.food for held in result.holdings if held.food}
    allergens = {str(one) for food in foods.values() for one in food.entry.contains}
    yield "allergens", ", ".join(sorted(allergens)) or "none"
    yield "allergens-not-looked-at", _ids(foods, _is_unseen)
    yield "choking", _ids(foods, lambda food: food.entry.can_choke)
    yield "cooking", "yes" if result.lesson.file.cooking else "no"
    for stop, movement in result.movements.items():
        done = (
            f"{' and '.join(held.id for held in one.row.sides)}: {one.move_id}"
            for one in movement.counts
        )
        yield f"{MOVES_AT}{stop}", "; ".join(sorted(done)) or "none"


def _is_unseen(food: Food) -> bool:
    return food.entry.allergens == NOT_LOOKED_AT


def _ids(foods: Mapping[str, Food], asked: Callable[[Food], bool]) -> str:
    return ", ".join(sorted(name for name, food in foods.items() if asked(food))) or "none"
