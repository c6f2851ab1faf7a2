"""Where every shown number of a lesson comes from, step by step."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.count import Count
from generator.compute.gap import Gap
from generator.compute.move_minutes import MoveMinutes, move_minutes
from generator.compute.result import Comparison, Day, Holding, LessonResult, Movement
from generator.model.measure import Measure
from generator.model.move import Move


@dataclass(frozen=True, slots=True)
class Step:
    """One step on the way to a number."""

    what: str
    """``record``, ``portion``, ``amount``, ``rounding``, ``subtraction``, ``sum`` or ``division``."""
    says: str
    """The step in a sentence or as arithmetic."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A shown number."""

    id: str
    """Its address in the lesson: ``lunch.row-1.first``, ``lunch.row-1.gap``, ``move-1.card-1.count``."""
    value: Decimal
    unit: str
    """``kcal``, ``mg``, ``g`` or ``times``."""
    exact: Fraction
    """The value before rounding; the same as ``value`` where nothing was rounded."""
    steps: tuple[Step, ...]


def trace(result: LessonResult) -> tuple[Figure, ...]:
    """Every number a page of the lesson shows, in the order of the stops."""
    figures: list[Figure] = []
    for comparison in result.comparisons.values():
        figures += _comparison(comparison)
    for stop_id, movement in result.movements.items():
        figures += _movement(stop_id, movement, result)
    for stop_id, day in result.days.items():
        figures += _day(stop_id, day)
    return tuple(figures)


def _comparison(comparison: Comparison) -> Iterator[Figure]:
    stop = comparison.stop
    for number, row in enumerate(comparison.rows, 1):
        base = f"{stop.id}.row-{number}"
        for side, held in zip(("first", "second"), row.sides, strict=True):
            yield Figure(
                f"{base}.{side}",
                held.shown.value,
                stop.measure.unit,
                held.shown.exact,
                _holding_steps(held, stop.measure),
            )
        yield _gap(f"{base}.gap", row.gap, stop.measure)
        if row.count:
            yield from _counts(f"{base}.count", row.gap.size, row.count, stop.measure)
    total = comparison.total
    for index, side in enumerate(("first", "second")):
        values = [row.sides[index].shown.value for row in comparison.rows]
        value = (total.first, total.second)[index]
        exact = sum((row.sides[index].shown.exact for row in comparison.rows), Fraction(0))
        yield Figure(
            f"{stop.id}.total.{side}",
            value,
            stop.measure.unit,
            exact,
            (Step("sum", " + ".join(map(str, values)) + f" = {value}"),),
        )
    yield _gap(f"{stop.id}.total.gap", total, stop.measure)


def _movement(stop_id: str, movement: Movement, result: LessonResult) -> Iterator[Figure]:
    measure = movement.comparison.stop.measure
    for number, counted in enumerate(movement.counts, 1):
        base = f"{stop_id}.card-{number}"
        yield from _counts(f"{base}.count", counted.row.gap.size, counted.count, measure)
        if measure is Measure.ENERGY:
            gap, grades = counted.row.gap.size, result.lesson.file.grades
            minutes = move_minutes(counted.move, gap, grades)
            if minutes:
                yield _minutes(f"{base}.minutes", minutes, counted.move)


def _minutes(name: str, found: MoveMinutes, move: Move) -> Figure:
    energy = move.youth_energy
    source = f"{energy.source}, {energy.code}, status {energy.status}" if energy else ""
    child = found.child
    steps = (
        Step(
            "record", f"{found.activity}: {found.mety} METy at {child.age_years} years ({source})"
        ),
        Step(
            "resting energy",
            f"mean of a boy of {child.weights_kg[0]} kg and a girl of {child.weights_kg[1]} kg "
            f"(CDC 2000 medians), Schofield 1985: {child.resting} kcal a day",
        ),
        Step("minutes", f"{found.formula} = {float(found.minutes):.1f}; for teaching notes only"),
    )
    return Figure(name, Decimal(round(found.minutes)), "minutes", found.minutes, steps)


def _day(stop_id: str, day: Day) -> Iterator[Figure]:
    for number, held in enumerate(day.eaten, 1):
        steps = _holding_steps(held, Measure.ENERGY)
        yield Figure(f"{stop_id}.food-{number}", held.shown.value, "kcal", held.shown.exact, steps)
    balance = day.balance
    added = " + ".join(str(held.shown.value) for held in day.eaten)
    total = sum((held.shown.exact for held in day.eaten), Fraction(0))
    step = Step("sum", f"{added} = {balance.eaten}, of shown values")
    yield Figure(f"{stop_id}.eaten", balance.eaten, "kcal", total, (step,))
    yield Figure(
        f"{stop_id}.needed", balance.needed, "kcal", Fraction(day.need.total), _need_steps(day)
    )
    lean = Step(
        "subtraction",
        f"{balance.eaten} ÷ {balance.needed} = {float(balance.ratio):.2f}: {balance.lean}",
    )
    yield Figure(f"{stop_id}.gap", balance.gap, "kcal", Fraction(balance.gap), (lean,))


def _need_steps(day: Day) -> tuple[Step, ...]:
    person, body, need = day.stop.person, day.body, day.need
    return (
        Step(
            "record",
            f"reference {person.sex} of {person.age} years: {body.height_cm} cm, {body.weight_kg} kg "
            "(CDC 2000 growth charts, medians)",
        ),
        Step(
            "equation", f"NASEM 2023, {person.activity}: {need.equation} = {need.spent} kcal a day"
        ),
        Step("growth", f"and {need.growth} kcal a day for growth (NASEM 2023, Table 5-5)"),
        Step("rounding", f"to the nearest 10 kcal: {need.total} → {day.balance.needed}"),
    )


def _holding_steps(held: Holding, measure: Measure) -> tuple[Step, ...]:
    if held.food is None or held.serving is None or held.per_100g is None:
        when = f", read on {held.item.read_on}" if held.item.read_on else ""
        return (
            Step("record", f"own value: {held.item.source}{when}"),
            Step("rounding", held.shown.rule),
        )
    food, serving, unit = held.food, held.serving, measure.unit
    steps = [
        Step(
            "record",
            f"{food.release}, FDC {food.entry.fdc}, {food.entry.record}: {_plain(held.per_100g)} {unit} in 100 g",
        )
    ]
    if serving.portion:
        weighs = f"{serving.portion.record} weighs {serving.portion.grams} g"
        steps.append(
            Step(
                "portion",
                weighs
                + (
                    ""
                    if serving.times == 1
                    else f"; {_plain(serving.times)} × {serving.portion.grams} g = {_plain(serving.grams)} g"
                ),
            )
        )
    else:
        steps.append(Step("portion", f"{_plain(serving.grams)} g, as the lesson gives it"))
    steps.append(
        Step(
            "amount",
            f"{_plain(held.per_100g)} × {_plain(serving.grams)} ÷ 100 = {_plain(held.shown.exact)} {unit}",
        )
    )
    steps.append(
        Step(
            "rounding",
            f"21 CFR 101.9{held.shown.rule}; half goes up: {_plain(held.shown.exact)} → {held.shown.value} {unit}",
        )
    )
    if held.often:
        steps.append(Step("how often", f"{held.often.frequency or 'no word'}: {held.often.rule}"))
    return tuple(steps)


def _gap(name: str, gap: Gap, measure: Measure) -> Figure:
    unit = measure.unit
    unrounded = f"before rounding the gap is {_plain(abs(gap.exact))} {unit}"
    step = Step(
        "subtraction",
        f"{gap.larger} − {gap.smaller} = {gap.size} {unit}, between shown values; {unrounded}",
    )
    return Figure(name, gap.size, unit, abs(gap.exact), (step,))


def _counts(name: str, gap: Decimal, count: Count, measure: Measure) -> Iterator[Figure]:
    left = f", {count.left_over} {measure.unit} left over"
    step = Step("division", f"{gap} ÷ {count.per} = {count.whole}{left if count.left_over else ''}")
    yield Figure(name, Decimal(count.whole), "times", Fraction(count.whole), (step,))
    yield Figure(
        name.removesuffix("count") + "left-over",
        count.left_over,
        measure.unit,
        Fraction(count.left_over),
        (step,),
    )


def _plain(exact: Fraction) -> str:
    """Decimal digits when there are not too many of them; the fraction itself when they never end."""
    bottom = exact.denominator
    for prime in (2, 5):
        while bottom % prime == 0:
            bottom //= prime
    if bottom != 1:
        return f"{exact.numerator}/{exact.denominator}"
    return f"{(Decimal(exact.numerator) / Decimal(exact.denominator)).normalize():f}"
