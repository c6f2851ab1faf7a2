"""Which number of today a filmed number is, by what it is of and never by where it stood.

So rows may change places, be added and be renamed. A number whose food has gone finds none: what
the lesson says of another food sets nothing right.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from collections.abc import Set as AbstractSet
from decimal import Decimal

from generator.compute.showing import Showing
from generator.model.figure import FigureKind
from generator.model.measure import Measure
from generator.model.names import TOTAL
from generator.model.recorded import FilmedFigure, FilmedFood

_Key = tuple[FigureKind, Measure, tuple[str, ...], str, str, str, str, str]


def as_filmed_today(
    filmed: Sequence[FilmedFigure], today: Sequence[Showing]
) -> list[Showing | None]:
    """For each filmed number the one of today; a number of today serves one of the film, and each time it is said again.

    Args:
        filmed: the numbers of the record.
        today: the numbers of the lesson, where it shows them.
    """
    named = _by_names_of_today(filmed, today)
    found = _likest(named, today)
    for at, one in enumerate(named):
        found[at] = found[at] or _still_right(one, today)
    for at, one in enumerate(named):
        found[at] = found[at] or _said_before(one, named, found)
    return found


def filmed_foods(showing: Showing) -> tuple[FilmedFood, ...]:
    """What a number is of, as a record keeps it."""
    return tuple(
        FilmedFood.model_construct(
            food=held.id,
            amount=held.item.amount,
            fdc=held.food.entry.fdc if held.food and not held.item.value else None,
        )
        for held in showing.figure.foods
    )


def _by_names_of_today(
    filmed: Sequence[FilmedFigure], today: Sequence[Showing]
) -> list[FilmedFigure]:
    """Filmed numbers with their foods by the ids of today: a record tells a food that was renamed."""
    kept = {food for one in filmed for food in one.foods}
    records = {food.food: food.fdc for one in today for food in filmed_foods(one)}
    held = Counter(fdc for fdc in records.values() if fdc)
    names = {fdc: name for name, fdc in records.items() if fdc and held[fdc] == 1}
    renamed = {
        food.food: names[food.fdc]
        for food in kept
        if food.fdc in names and food.food != names[food.fdc] and food.food not in records
    }
    return [_renamed(one, renamed) for one in filmed] if renamed else list(filmed)


def _renamed(filmed: FilmedFigure, names: dict[str, str]) -> FilmedFigure:
    foods = tuple(
        food.model_copy(update={"food": names.get(food.food, food.food)}) for food in filmed.foods
    )
    beside = names.get(filmed.beside, filmed.beside) if filmed.beside else None
    change = " ".join(names.get(word, word) for word in (filmed.change or "").split(" ")) or None
    return filmed.model_copy(update={"foods": foods, "beside": beside, "change": change})


def _likest(filmed: Sequence[FilmedFigure], today: Sequence[Showing]) -> list[Showing | None]:
    """Numbers of the same foods, the likest pair first."""
    found: list[Showing | None] = [None] * len(filmed)
    rows = {(one.figure.foods[0].id, one.beside) for one in today if one.beside}
    pairs = sorted(
        (*_unlikeness(one, showing, rows), at, place)
        for at, one in enumerate(filmed)
        for place, showing in enumerate(today)
        if _key(one) == _key_of(showing) and _of_the_same(one, showing)
    )
    taken: set[int] = set()
    for *_, at, place in pairs:
        if found[at] is None and place not in taken:
            found[at] = today[place]
            taken.add(place)
    return found


def _of_the_same(filmed: FilmedFigure, showing: Showing) -> bool:
    """Whether equal keys mean one number: at another stop it must be of the same amounts.

    Of what has no foods, only its stop says what it is of, or that it is as large.
    """
    if filmed.stop == showing.stop or filmed.value == showing.figure.value:
        return True
    return bool(filmed.foods) and _amounts(filmed.foods) == _amounts(filmed_foods(showing))


def _unlikeness(
    filmed: FilmedFigure, showing: Showing, rows: AbstractSet[tuple[str, str]]
) -> tuple[int, bool, bool, bool, bool]:
    """Sorts the likest pair first: all the same, then as large where its row has gone, then of its row.

    Of two own values of one name the one that is as large is meant: the film is right of it.
    """
    amounts = _amounts(filmed.foods) != _amounts(filmed_foods(showing))
    size = filmed.value != showing.figure.value
    other_row = filmed.beside is not None and filmed.beside != showing.beside
    row_gone = other_row and (filmed.foods[0].food, filmed.beside) not in rows
    if amounts or size:
        kind = 3 if other_row else 2
    else:
        kind = (1 if row_gone else 3) if other_row else 0
    return kind, filmed.stop != showing.stop, amounts, size, (filmed.side or "") != showing.side


def _still_right(filmed: FilmedFigure, today: Sequence[Showing]) -> Showing | None:
    """A number that is as large as it was and means the same, so that what the film says is right still."""
    sides = {(one.stop, one.side) for one in today}
    stops = {one.stop for one in today}
    for one in today:
        as_large = one.figure.value == filmed.value
        if as_large and _alike(filmed, one) and _means_the_same(filmed, one, sides, stops):
            return one
    return None


def _alike(filmed: FilmedFigure, showing: Showing) -> bool:
    figure = showing.figure
    of = (figure.kind, figure.measure, showing.move, showing.person)
    return of == (filmed.kind, filmed.measure, filmed.move or "", filmed.person or "")


def _means_the_same(
    filmed: FilmedFigure,
    showing: Showing,
    sides: AbstractSet[tuple[str, str | None]],
    stops: AbstractSet[str],
) -> bool:
    """Of numbers that are alike and as large: whether one stands for the other.

    A sum over other foods at the same stop does, one over the same foods there or of a side with
    another name, and the answer of a question whose stop has another name.
    """
    here, side = filmed.stop == showing.stop, (filmed.side or "") == showing.side
    if filmed.kind is FigureKind.ANSWER:
        return here or filmed.stop not in stops
    if filmed.foods and _amounts(filmed.foods) == _amounts(filmed_foods(showing)):
        renamed = filmed.kind is FigureKind.TOTAL and (showing.stop, filmed.side) not in sides
        return (here and side) or renamed
    of_all = showing.figure.row in {TOTAL, ""} or filmed.kind is FigureKind.ESTIMATE
    return of_all and here and side and filmed.change in {None, showing.change}


def _said_before(
    filmed: FilmedFigure, others: Sequence[FilmedFigure], found: Sequence[Showing | None]
) -> Showing | None:
    """The number of today of what the film says twice, once more at a stop that shows no number."""
    pairs: Iterator[tuple[FilmedFigure, Showing | None]] = zip(others, found, strict=True)
    for other, showing in pairs:
        same = _key(other) == _key(filmed) and _said(other) == _said(filmed)
        if same and showing is not None:
            return showing
    return None


def _said(filmed: FilmedFigure) -> tuple[Decimal, list[tuple[str, str]]]:
    return filmed.value, _amounts(filmed.foods)


def _amounts(foods: Sequence[FilmedFood]) -> list[tuple[str, str]]:
    return sorted((food.food, food.amount or "") for food in foods)


def _key(filmed: FilmedFigure) -> _Key:
    side = filmed.side or "" if filmed.kind is FigureKind.TOTAL else ""
    foods = tuple(sorted(food.food for food in filmed.foods))
    of = (filmed.move or "", filmed.person or "", filmed.change or "", filmed.asked or "")
    return filmed.kind, filmed.measure, foods, side, *of


def _key_of(showing: Showing) -> _Key:
    figure = showing.figure
    side = showing.side if figure.kind is FigureKind.TOTAL else ""
    foods = tuple(sorted(held.id for held in figure.foods))
    of = (showing.move, showing.person, showing.change, showing.asked)
    return figure.kind, figure.measure, foods, side, *of
