"""Answers that a lesson computes: to its parting question, and to questions whose answer is checked."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from difflib import get_close_matches
from fractions import Fraction

from generator.compute.arithmetic import Part, Reckoned, SumError, in_line, in_order, reckon
from generator.compute.figure import Figure
from generator.compute.holding import Holding
from generator.compute.result import Answer, ChosenAnswer, Comparison, NoAnswer, NumberAnswer
from generator.compute.steps import Reckoning
from generator.model.asked import Among, Which
from generator.model.figure import FigureKind, Tally
from generator.model.lesson import Lesson

PARTING = "parting"
"""What the parting question is called in the ledger, where a stop's name would stand."""
_EXTREMES: Mapping[str, Callable[[list[Decimal]], Decimal]] = {"most": max, "least": min}


@dataclass(frozen=True, slots=True)
class _Known:
    """What an answer is made from."""

    figures: Mapping[str, Figure]
    """By every name they may be called by."""
    comparisons: Mapping[str, Comparison]
    """By id of the compare stop."""


def answers(
    lesson: Lesson, figures: tuple[Figure, ...], comparisons: Mapping[str, Comparison]
) -> Iterator[tuple[str, Answer]]:
    """Every answer of a lesson that is computed, by the stop that asks for it; ``PARTING`` last.

    Args:
        lesson: with its questions.
        figures: the numbers of its stops.
        comparisons: its compare stops worked out.
    """
    known = _Known(_by_name(figures, comparisons), comparisons)
    for stop, ids in zip(lesson.file.stops, lesson.ids, strict=True):
        if stop.computed:
            yield ids.stop, _answer(*stop.computed, known)
    if parting := lesson.file.parting:
        yield PARTING, _answer(parting.answer, parting.which, known)


def answer_figures(found: Mapping[str, Answer]) -> Iterator[Figure]:
    """Each answer as a number of the ledger: itself, or what the food or side holds that is right."""
    for stop, answer in found.items():
        if isinstance(answer, NoAnswer):
            continue
        yield Figure(
            id=f"{stop}.{FigureKind.ANSWER}",
            kind=FigureKind.ANSWER,
            value=answer.value,
            measure=answer.measure,
            unit=answer.unit or Tally.TIMES,
            exact=Fraction(answer.value),
            stop=stop,
            steps=(Reckoning(answer.parts, answer.names, answer.value),),
        )


def _by_name(
    figures: tuple[Figure, ...], comparisons: Mapping[str, Comparison]
) -> Mapping[str, Figure]:
    """By their names, and without the stop's where a lesson has but one comparison."""
    shown = [one for one in figures if one.kind is not FigureKind.MINUTES]
    only = next(iter(comparisons)) if len(comparisons) == 1 else None
    short = {one.id.removeprefix(f"{only}."): one for one in shown if one.stop == only}
    return short | {one.id: one for one in shown}


def _answer(written: str | None, which: Which | None, known: _Known) -> Answer:
    try:
        if which:
            return _chosen(which, known)
        return _number(reckon(written or "", known.figures))
    except SumError as wrong:
        key = "which" if which else "answer"
        return NoAnswer(key, wrong.what, _hint(wrong, known))


def _hint(wrong: SumError, known: _Known) -> str:
    near = get_close_matches(in_order(wrong.word), sorted(known.figures), 1, 0.6)
    return f"did you mean `{near[0]}`?" if wrong.word and near else wrong.hint


def _number(found: Reckoned) -> NumberAnswer:
    shown = in_line(_plain(part) for part in found.parts)
    if found.value < 0:
        raise SumError(
            f"the answer, {shown}, lies below zero", "take the smaller from the larger number"
        )
    if found.value.denominator != 1:
        what = f"the answer, {shown} = {_plain(found.value)}, is not whole"
        raise SumError(what, "ask for another number, or choose amounts that divide evenly")
    if found.measure is None:
        raise SumError("names no number of the lesson", "write one as `trace` prints it")
    value = Decimal(found.value.numerator)
    return NumberAnswer(value, found.measure, found.unit, found.parts, found.names)


def _chosen(which: Which, known: _Known) -> ChosenAnswer:
    comparison = known.comparisons.get(which.of)
    if comparison is None:
        named = ", ".join(f"`{one}`" for one in known.comparisons)
        hint = f"there is {named}" if named else "add a compare stop first"
        raise SumError(f"`of: {which.of}` is no compare stop of the lesson", hint)
    options = _options(which.among, comparison)
    held = [value for value, _ in options]
    most = _EXTREMES.get(which.holds)
    wanted = most(held) if most else _wanted(which, comparison, known)
    right = [at for at, value in enumerate(held) if value == wanted]
    if len(right) != 1:
        none = "none" if not right else f"{len(right)} of them"
        what = f"which of the {which.among} holds {which.holds}: {none}"
        raise SumError(what, "ask so that exactly one of them is right")
    parts: tuple[Part, ...] = tuple(map(Fraction, held))
    return ChosenAnswer(
        value=wanted,
        measure=comparison.stop.measure,
        unit=comparison.stop.measure.unit,
        parts=parts,
        names=(),
        comparison=which.of,
        options=tuple(option for _, option in options),
        right=right[0],
    )


def _wanted(which: Which, comparison: Comparison, known: _Known) -> Decimal:
    found = reckon(which.holds, known.figures)
    if found.unit is not comparison.stop.measure.unit:
        raise SumError(
            f"`holds:` is not in {comparison.stop.measure.unit}", "name a number of that comparison"
        )
    return Decimal(found.value.numerator) / Decimal(found.value.denominator)


def _options(among: Among, comparison: Comparison) -> list[tuple[Decimal, Holding | int]]:
    """What can be chosen with what it holds, each once."""
    if among is Among.SIDES:
        total = comparison.total
        return [(total.first, 0), (total.second, 1)]
    found: dict[tuple[str, str | None], tuple[Decimal, Holding | int]] = {}
    for held in comparison.holdings:
        found.setdefault((held.id, held.item.amount), (held.shown.value, held))
    return list(found.values())


def _plain(part: Part) -> str:
    return part if isinstance(part, str) else str(part)
