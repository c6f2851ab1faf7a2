"""A compare stop worked out: rows, totals and counts, and every number of them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

from generator.compute.count import Count, count_moves
from generator.compute.counted import AnswerKind, CountedAnswer
from generator.compute.estimate import rounded
from generator.compute.figure import Figure
from generator.compute.gap import Gap, total_gap
from generator.compute.holding import Holding, hold
from generator.compute.result import Comparison, Counts, Row
from generator.compute.steps import (
    Addition,
    AsWritten,
    Division,
    Estimation,
    Step,
    Subtraction,
)
from generator.compute.stops.held import held_figure
from generator.compute.stops.kind import Given, WorkedKind
from generator.model.figure import FigureKind, Tally
from generator.model.ids import StopIds
from generator.model.library import Library
from generator.model.measure import Measure
from generator.model.names import TOTAL
from generator.model.stops.compare import CompareStop, Help, Item, Solve


def _work(stop: CompareStop, ids: StopIds, given: Given) -> Comparison:
    """Rows, totals and, where a move stop counts its gaps, counts."""
    rows = tuple(
        _row(name, row.foods, foods, stop.measure, given.library)
        for name, row, foods in zip(ids.parts, stop.rows, ids.foods, strict=True)
    )
    total = total_gap(tuple(row.gap for row in rows))
    per = given.counted.get(ids.stop)
    counts = _counts(rows, total, per) if per else None
    return Comparison(stop, rows, total, counts, (ids.sides[0], ids.sides[1]))


def _row(
    name: str,
    items: tuple[Item, Item],
    foods: tuple[str, ...],
    measure: Measure,
    library: Library,
) -> Row:
    first, second = (
        hold(item, measure, library, food) for item, food in zip(items, foods, strict=True)
    )
    gap = Gap(first.shown.value, second.shown.value, first.shown.exact - second.shown.exact)
    return Row(name, (first, second), gap)


def _counts(rows: tuple[Row, ...], total: Gap, per: Decimal) -> Counts:
    each = tuple(count_moves(row.gap.size, per) for row in rows)
    return Counts(per, each, count_moves(total.size, per))


def _figures(_: str, comparison: Comparison) -> Iterator[Figure]:
    """Rows first, then the totals, then what one count stands for."""
    stop, counts, unit = comparison.stop, comparison.counts, comparison.stop.measure.unit
    for at, row in enumerate(comparison.rows):
        for side, held in enumerate(row.sides):
            name = f"{stop.id}.{row.id}.{comparison.side_ids[side]}"
            figure = held_figure(stop.id, row.id, held, stop.measure)
            yield replace(figure, id=name, side=side, written=("rows", at, "foods", side))
        yield from _of_gap(
            comparison, row.id, row.gap, counts.rows[at] if counts else None, row.sides
        )
    for side, total in enumerate((comparison.total.first, comparison.total.second)):
        foods = tuple(row.sides[side] for row in comparison.rows)
        yield Figure(
            id=f"{stop.id}.{TOTAL}.{comparison.side_ids[side]}",
            kind=FigureKind.TOTAL,
            value=total,
            measure=stop.measure,
            unit=unit,
            exact=sum((one.shown.exact for one in foods), Fraction(0)),
            stop=stop.id,
            steps=(Addition(tuple(one.shown.value for one in foods), total),),
            row=TOTAL,
            side=side,
            foods=foods,
        )
    yield from _estimates(comparison)
    of_all = counts.total if counts else None
    yield from _of_gap(comparison, TOTAL, comparison.total, of_all, comparison.holdings)
    if counts:
        yield Figure(
            id=f"{stop.id}.{FigureKind.ONE_MOVE_PER}",
            kind=FigureKind.ONE_MOVE_PER,
            value=counts.per,
            measure=stop.measure,
            unit=unit,
            exact=Fraction(counts.per),
            stop=stop.id,
            steps=(AsWritten("one_move_per"),),
        )


def estimated(comparison: Comparison) -> tuple[str, Gap] | None:
    """The row of a comparison's estimate, ``total`` for all, and its gap; nothing without an estimate."""
    estimate = comparison.stop.estimate
    if estimate is None:
        return None
    gaps = {row.id: row.gap for row in comparison.rows} | {TOTAL: comparison.total}
    row = estimate.row or comparison.rows[0].id
    return row, gaps[row]


def _estimates(comparison: Comparison) -> Iterator[Figure]:
    """What a sensible estimate comes to, where one is asked for."""
    found = estimated(comparison)
    if found is None:
        return
    row, gap = found
    near, measure = rounded(gap), comparison.stop.measure
    foods = next((one.sides for one in comparison.rows if one.id == row), comparison.holdings)
    yield Figure(
        id=f"{comparison.stop.id}.{row}.{FigureKind.ESTIMATE}",
        kind=FigureKind.ESTIMATE,
        value=near.gap,
        measure=measure,
        unit=measure.unit,
        exact=Fraction(near.gap),
        stop=comparison.stop.id,
        steps=(Estimation(near, gap),),
        row=row,
        foods=foods,
    )


def _of_gap(
    comparison: Comparison, row: str, gap: Gap, count: Count | None, foods: tuple[Holding, ...]
) -> Iterator[Figure]:
    """A gap, and its count with what is left over."""
    stop, unit = comparison.stop.id, comparison.stop.measure.unit

    def figure(
        kind: FigureKind, value: Decimal, exact: Fraction, step: Step, *, times: bool = False
    ) -> Figure:
        return Figure(
            id=f"{stop}.{row}.{kind}",
            kind=kind,
            value=value,
            measure=comparison.stop.measure,
            unit=Tally.TIMES if times else unit,
            exact=exact,
            stop=stop,
            steps=(step,),
            row=row,
            foods=foods,
        )

    yield figure(FigureKind.GAP, gap.size, abs(gap.exact), Subtraction(gap, unit))
    if count:
        step = Division(gap.size, count, unit)
        whole, rest = Decimal(count.whole), count.left_over
        yield figure(FigureKind.COUNT, whole, Fraction(whole), step, times=True)
        yield figure(FigureKind.LEFT_OVER, rest, Fraction(rest), step)


def _counted(stop: str, comparison: Comparison) -> Iterator[CountedAnswer]:
    """Gap and count of each row that is not worked out, and the gap of the totals, as far as they are asked for."""
    solve = comparison.stop.solve
    for at, (row, written) in enumerate(zip(comparison.rows, comparison.stop.rows, strict=True)):
        if written.help is Help.WORKED:
            continue
        if Solve.GAP in solve:
            yield _answer(stop, row.id, AnswerKind.GAP, row.gap.size)
        if Solve.COUNT in solve and comparison.counts:
            yield _answer(stop, row.id, AnswerKind.COUNT, comparison.counts.rows[at].whole)
    if Solve.TOTAL in solve:
        yield _answer(stop, TOTAL, AnswerKind.GAP, comparison.total.size)


def _answer(stop: str, row: str, kind: AnswerKind, value: Decimal | int) -> CountedAnswer:
    return CountedAnswer(f"{stop}.{row}.{kind}", stop, kind, str(value), row)


KIND = WorkedKind(stop=CompareStop, after=(), work=_work, figures=_figures, counted=_counted)
