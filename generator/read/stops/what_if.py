"""A what-if stop: the comparison it changes, where each changed food stands there, and what takes its place."""

from __future__ import annotations

from collections.abc import Iterator

from generator.model.names import InnerIds
from generator.model.stops.compare import CompareStop, Item
from generator.model.stops.what_if import Change, Seat, WhatIfStop, is_called, seats
from generator.problems import Problem
from generator.read.as_written import entries, keyed, word
from generator.read.explain import did_you_mean, validate
from generator.read.meant import either
from generator.read.stops.items import item_problems
from generator.read.stops.kind import MadeStop, ReadKind, WrittenStop

_NEW = ("to", "and")
"""The keys that hold what takes the changed food's place."""


def _references(written: WrittenStop) -> Iterator[Problem]:
    compared = _compared(written)
    if isinstance(compared, Problem):
        yield compared
    compare = compared if isinstance(compared, CompareStop) else None
    taken: dict[tuple[Seat, frozenset[tuple[object, ...]]], int] = {}
    for number, entry in enumerate(entries(written.data, "changes")):
        for key in _NEW:
            measure = compare.measure if compare else None
            yield from item_problems(
                keyed(entry).get(key), written, measure, "changes", number, key
            )
        change = validate(Change, entry, written.places, (*written.path, "changes", number))
        if compare is None or isinstance(change, list):
            continue
        found = seats(compare.inner_ids, change)
        if len(found) != 1:
            yield _not_one(compare, change, found, number, written)
            continue
        first = taken.setdefault((found[0], frozenset(map(_what, change.items))), number)
        if first < number:
            what = f"changes {first + 1} and {number + 1} are the same"
            yield Problem(written.place("changes", number), what, "take one of them out")


def _what(item: Item) -> tuple[object, ...]:
    return item.food or item.name, item.amount, item.value


def _compared(written: WrittenStop) -> CompareStop | Problem | None:
    """The comparison whose food is changed; nothing where what is wrong with it is told already."""
    target, own = word(written.data, "for"), written.path[1]
    if target is None:
        return None
    compares = {
        name: index
        for index, stop in written.stops.items()
        if stop.kind == "compare" and (name := word(stop.data, "id")) is not None
    }
    if target not in compares:
        near = did_you_mean(target, list(compares))
        hint = near if compares else "add a `compare` stop with this id above"
        return Problem(written.place("for"), f"no compare stop has the id `{target}`", hint)
    if isinstance(own, int) and compares[target] > own:
        what = f"`{target}` stands below this stop"
        hint = "move this stop below it: a learner finds the gap first, and changes it then"
        return Problem(written.place("for"), what, hint)
    made = validate(CompareStop, written.stops[compares[target]].data, written.places)
    return None if isinstance(made, list) or _misspelled(made, written) else made


def _misspelled(compare: CompareStop, written: WrittenStop) -> bool:
    """Whether a food of the comparison is none: it may be the one that is changed."""
    foods = (item.food for row in compare.rows for item in row.foods if item.food)
    return any(food not in written.library.foods for food in foods)


def _not_one(
    compare: CompareStop, change: Change, found: tuple[Seat, ...], number: int, written: WrittenStop
) -> Problem:
    """The food of a change is not in the comparison, or may be any of several there."""
    ids = compare.inner_ids
    if change.row is not None and change.row not in ids.parts:
        what = f"no row of `{compare.id}` is called `{change.row}`"
        hint = did_you_mean(change.row, list(ids.parts))
        return Problem(written.place("changes", number, "row"), what, hint)
    if change.side is not None and not any(is_called(one, change.side) for one in ids.sides):
        what = f"no side of `{compare.id}` is called `{change.side}`"
        hint = f"it can be {either([str(side) for side in compare.sides])}"
        return Problem(written.place("changes", number, "side"), what, hint)
    place = written.place("changes", number, "change")
    if found:
        what = f"`{change.change}` stands {len(found)} times in `{compare.id}`"
        return Problem(place, what, f"say which one is changed: {_which(compare, found)}")
    foods = sorted({food for both in ids.foods for food in both})
    what = f"no row of `{compare.id}` holds `{change.change}`"
    if change.change in foods:
        where = " and ".join(f"`{key}`" for key in ("row", "side") if getattr(change, key))
        return Problem(place, f"{what} there", f"look at {where}, or leave it out")
    return Problem(place, what, did_you_mean(change.change, foods))


def _which(compare: CompareStop, found: tuple[Seat, ...]) -> str:
    """The keys that tell the places apart, with what to write there."""
    rows, sides = (list(dict.fromkeys(seat[part] for seat in found)) for part in (0, 1))
    names = [f"{compare.inner_ids.parts[row]}" for row in rows]
    ways = []
    if len(rows) > 1:
        ways.append(f"`row:` with {either(names)}")
    if len(sides) > 1:
        ways.append(f"`side:` with {either([str(compare.sides[side]) for side in sides])}")
    return " and ".join(ways)


def _names(made: MadeStop[WhatIfStop]) -> Iterator[Problem]:
    """Two changes of one name; those that are the same altogether are told with what they name."""
    ids: InnerIds = made.ids
    for number, (change, name) in enumerate(zip(made.stop.changes, ids.parts, strict=True)):
        first = ids.parts.index(name)
        if first < number and change.id:
            what = f"the id `{name}` is taken by change {first + 1}"
            yield Problem(made.place("changes", number, "id"), what, "choose another id")
        elif first < number:
            what = f"changes {first + 1} and {number + 1} are the same"
            yield Problem(made.place("changes", number), what, "take one of them out")
    yield from _twice(made)


def _twice(made: MadeStop[WhatIfStop]) -> Iterator[Problem]:
    """A change into one food twice."""
    for number, foods in enumerate(made.ids.foods):
        if len(set(foods)) < len(foods):
            what = f"`to:` and `and:` of change {number + 1} are the same food"
            hint = "write it once with the whole amount, such as `2 cups`"
            yield Problem(made.place("changes", number, "and"), what, hint)


KIND = ReadKind(stop=WhatIfStop, references=_references, names=_names)
