"""Whether everything a lesson names exists: foods, portions, values, moves, other stops."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.food import Food
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.places import Path, Places
from generator.problems import Problem
from generator.read.explain import did_you_mean
from generator.read.source import Data


def reference_problems(stops: Data, places: Places, library: Library) -> list[Problem]:
    """Every name in the stops that leads nowhere, looked up in the plain data."""
    if not isinstance(stops, list):
        return []
    found = [*_repeated_ids(stops, places)]
    compares = {str(inner.get("id")): inner for stop in stops if (inner := _part(stop, "compare"))}
    for index, stop in enumerate(stops):
        base: Path = ("stops", index)
        if compare := _part(stop, "compare"):
            found += _compare(compare, (*base, "compare"), places, library)
        if move := _part(stop, "move"):
            found += _move(move, (*base, "move"), places, library, compares)
    return found


def _part(stop: Data, kind: str) -> dict[str, Data] | None:
    """What stands below a stop's kind; nothing where the stop is of another kind."""
    inner = stop.get(kind) if isinstance(stop, dict) else None
    return inner if isinstance(inner, dict) else None


def _repeated_ids(stops: list[Data], places: Places) -> Iterator[Problem]:
    seen: dict[str, int] = {}
    for index, stop in enumerate(stops):
        for kind, inner in stop.items() if isinstance(stop, dict) else ():
            path = (
                ("stops", index, kind, "id") if isinstance(inner, dict) else ("stops", index, "id")
            )
            name = inner.get("id") if isinstance(inner, dict) else inner if kind == "id" else None
            if not isinstance(name, str):
                continue
            line = places.at(*path).line
            if name in seen:
                yield Problem(
                    places.at(*path),
                    f"the id `{name}` is taken by the stop on line {seen[name]}",
                    "choose another id",
                )
            seen.setdefault(name, line)


def _compare(
    data: dict[str, Data], base: Path, places: Places, library: Library
) -> Iterator[Problem]:
    measure = data.get("measure")
    known = Measure(measure) if isinstance(measure, str) and measure in set(Measure) else None
    rows = data.get("rows")
    for number, row in enumerate(rows if isinstance(rows, list) else []):
        path = (*base, "rows", number)
        if not isinstance(row, list) or len(row) != 2:
            held = len(row) if isinstance(row, list) else 1
            what = f"row {number + 1} holds {held} food{'' if held == 1 else 's'} and needs two, one for each side"
            yield Problem(
                places.at(*path), what, "write - [{food: …, amount: …}, {food: …, amount: …}]"
            )
            continue
        for side, item in enumerate(row):
            if isinstance(item, dict):
                yield from _item(item, (*path, side), places, library, known)


def _item(
    item: dict[str, Data], path: Path, places: Places, library: Library, measure: Measure | None
) -> Iterator[Problem]:
    name = item.get("food")
    if not isinstance(name, str):
        return
    food = library.foods.get(name)
    if food is None:
        hint = did_you_mean(name, list(library.foods))
        yield Problem(
            places.at(*path, "food"), f"there is no food `{name}` in site_data/foods.yaml", hint
        )
        return
    if "value" in item:
        return
    amount = item.get("amount")
    if isinstance(amount, str) and food.serving(amount) is None:
        yield Problem(
            places.at(*path, "amount"), f"`{amount}` is no portion of `{name}`", _portions(food)
        )
    if measure and food.value(measure) is None:
        what = f"the record of `{name}` has no value for {measure.value}"
        yield Problem(
            places.at(*path, "food"),
            what,
            "choose another food, or give `value:` and `source:`; no value is not zero",
        )


def _portions(food: Food) -> str:
    names = ", ".join(f"`{portion.names['en']}`" for portion in food.entry.portions)
    return f"write one of {names}, a multiple of one, or grams such as `150 g`"


def _move(
    data: dict[str, Data],
    base: Path,
    places: Places,
    library: Library,
    compares: dict[str, dict[str, Data]],
) -> Iterator[Problem]:
    moves = data.get("moves")
    for number, name in enumerate(moves if isinstance(moves, list) else []):
        if isinstance(name, str) and name not in library.moves:
            hint = did_you_mean(name, list(library.moves))
            yield Problem(
                places.at(*base, "moves", number),
                f"there is no move `{name}` in site_data/moves.yaml",
                hint,
            )
    target = data.get("for")
    if not isinstance(target, str):
        return
    if target not in compares:
        hint = (
            did_you_mean(target, list(compares))
            if compares
            else "add a `compare` stop with this id"
        )
        yield Problem(places.at(*base, "for"), f"no compare stop has the id `{target}`", hint)
        return
    compare = compares[target]
    rows = compare.get("rows")
    if isinstance(rows, list) and isinstance(moves, list) and len(rows) != len(moves):
        what = f"{len(moves)} move{'s' if len(moves) != 1 else ''} for {len(rows)} row{'s' if len(rows) != 1 else ''} of `{target}`"
        yield Problem(
            places.at(*base, "moves"), what, "give one move for each row, in the same order"
        )
