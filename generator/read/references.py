"""Whether everything a lesson names exists: foods, portions, values, moves, other stops."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from generator.model.food import Food
from generator.model.ids import PAGE_IDS
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.places import Path, Places
from generator.model.stops.compare import LARGEST_VALUE
from generator.model.wording import FALLBACK
from generator.problems import MOST_A_FILE, Place, Problem
from generator.read.explain import did_you_mean
from generator.read.meant import either, foods_like, moves_like
from generator.read.source import Data
from generator.read.stops import RawStop, foods_of


def reference_problems(
    stops: Mapping[int, RawStop], places: Places, library: Library
) -> list[Problem]:
    """Every name in the stops that leads nowhere, looked up in the plain data."""
    found: list[Problem] = [*_repeated_ids(stops, places)]
    compares = {
        name: stop.data
        for stop in stops.values()
        if stop.kind == "compare" and isinstance(name := stop.data.get("id"), str)
    }
    for index, stop in stops.items():
        base: Path = ("stops", index, stop.kind)
        if stop.kind == "compare":
            found += _compare(stop.data, base, places, library)
        if stop.kind == "day":
            found += _day(stop.data, base, places, library)
        if stop.kind == "move":
            found += _move(stop.data, base, places, library, compares)
    return list(_with_hints(found, library))


@dataclass(frozen=True, slots=True)
class _UnknownFood(Problem):
    """A food that is not in the library, before anybody looked what was meant."""

    food: str = ""


def _with_hints(found: Iterable[Problem], library: Library) -> Iterator[Problem]:
    """The problems with what was meant by each unknown food, as long as anybody reads them."""
    for number, problem in enumerate(found):
        if isinstance(problem, _UnknownFood):
            hint = foods_like(problem.food, library.foods) if number < MOST_A_FILE else ""
            yield Problem(problem.place, problem.what, hint)
        else:
            yield problem


def _repeated_ids(stops: Mapping[int, RawStop], places: Places) -> Iterator[Problem]:
    """Ids given twice, or one of the page's own."""
    lines: dict[str, int] = {}
    for index, stop in stops.items():
        name = stop.data.get("id")
        if not isinstance(name, str):
            continue
        place = places.at("stops", index, stop.kind, "id")
        if name in PAGE_IDS:
            yield Problem(place, f"the page uses the id `{name}` itself", "choose another id")
        elif name in lines:
            what = f"the id `{name}` is taken by the stop on line {lines[name]}"
            yield Problem(place, what, "choose another id")
        lines.setdefault(name, place.line)


def _compare(
    data: dict[str, Data], base: Path, places: Places, library: Library
) -> Iterator[Problem]:
    measure = data.get("measure")
    known = next((one for one in Measure if one == measure), None)
    rows = data.get("rows")
    for number, row in enumerate(rows if isinstance(rows, list) else []):
        path = (*base, "rows", number, "foods")
        for side, item in enumerate(foods_of(row)):
            if isinstance(item, dict):
                yield from _item(item, (*path, side), places, library, known)


def _day(data: dict[str, Data], base: Path, places: Places, library: Library) -> Iterator[Problem]:
    ate = data.get("ate")
    for number, item in enumerate(ate if isinstance(ate, list) else []):
        if isinstance(item, dict):
            yield from _item(item, (*base, "ate", number), places, library, Measure.ENERGY)


def _item(
    item: dict[str, Data], path: Path, places: Places, library: Library, measure: Measure | None
) -> Iterator[Problem]:
    name = item.get("food")
    if not isinstance(name, str):
        return
    food = library.foods.get(name)
    if food is None:
        what = f"there is no food `{name}` in site_data/foods.yaml"
        yield _UnknownFood(places.at(*path, "food"), what, food=name)
        return
    if "value" in item:
        return
    yield from _amount(item.get("amount"), food, path, places, measure)
    if measure and food.value(measure) is None:
        yield _no_value(food, measure, places.at(*path, "food"))


def _no_value(food: Food, measure: Measure, place: Place) -> Problem:
    """A figure the lesson needs: blank in the record, or not in the library yet."""
    if not food.entry.per_100g.gives(measure.value):
        what = f"the entry of `{food.id}` in site_data/foods.yaml does not say its {measure.value}"
        hint = (
            "take a download of its release in and run `python3 generator foods refresh`, or add "
            f"`{measure.value}:` from its record {food.entry.fdc} yourself; no value is not zero"
        )
        return Problem(place, what, hint)
    what = f"the record of `{food.id}` has no value for {measure.value}"
    hint = "choose another food, or give `value:` and `source:`; no value is not zero"
    return Problem(place, what, hint)


def _amount(
    amount: Data, food: Food, path: Path, places: Places, measure: Measure | None
) -> Iterator[Problem]:
    """An amount that cannot be weighed, or holds more than anybody's plate."""
    if not isinstance(amount, str):
        return
    place = places.at(*path, "amount")
    serving = food.serving(amount)
    if serving is None:
        yield Problem(place, f"`{amount}` is no portion of `{food.id}`", _portions(food))
        return
    per_100g = food.value(measure) if measure else None
    if measure and Fraction(per_100g or 0) * serving.grams / 100 > LARGEST_VALUE:
        what = f"`{amount}` of `{food.id}` holds more than {LARGEST_VALUE} {measure.unit}"
        yield Problem(place, what, "write an amount that somebody can eat")


def _portions(food: Food) -> str:
    names = either([portion.name(FALLBACK).words for portion in food.entry.portions])
    return f"write {names}, another number of it in digits, such as `1/2` or `3`, or grams such as `150 g`"


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
            hint = moves_like(name, library.moves)
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
