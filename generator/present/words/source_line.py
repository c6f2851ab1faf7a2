"""Where a number comes from, on one line: records, portions, rules and equations, with hardly a word of any language."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal
from fractions import Fraction
from typing import assert_never

from generator.compute import steps
from generator.compute.arithmetic import in_line
from generator.compute.figure import Figure
from generator.compute.rounding import to_places
from generator.compute.steps import Step
from generator.present.words.foreign import cited, joined
from generator.present.words.number import arithmetic
from generator.present.words.say import Say, as_decimal

_PLACES = 3
"""Decimals of a value before it is rounded; the trace has all of them."""


def source_line(figure: Figure, say: Say, release: str = "") -> str:
    """Every step of the trace, shortened: ``FDC 171688 · Apples, raw · 52 kcal / 100 g · …``.

    Args:
        figure: the number.
        say: the words.
        release: of the records, where it is said once for all of them.
    """
    return joined(" · ", (said for step in figure.steps for said in _step(step, say, release)))


def releases(figures: Iterable[Figure]) -> tuple[str, ...]:
    """The releases of the records that numbers come from, each once."""
    every = (step for figure in figures for step in figure.steps)
    found = (step.food.release for step in every if isinstance(step, steps.FromRecord))
    return tuple(dict.fromkeys(found))


def _step(step: Step, say: Say, release: str) -> Iterator[str]:
    match step:
        case steps.FromRecord(food, per_100g, unit):
            of = "" if food.release == release else f"{food.release}, "
            yield f"{of}FDC {food.entry.fdc}"
            yield cited(food.entry.record, say.language)
            yield f"{_number(per_100g, say)} {unit} / 100 g"
        case steps.Weighed(serving):
            portion = serving.portion
            if portion is not None and portion.record != f"{portion.grams} g":
                record = cited(portion.record, say.language)
                yield joined(" = ", (record, f"{_number(portion.grams, say)} g"))
            else:
                yield f"{_number(serving.grams, say)} g"
        case steps.OfAmount(per_100g, grams, exact, unit):
            worked = f"{_number(per_100g, say)} × {_number(grams, say)} ÷ {say.number(100)}"
            yield f"{worked} = {_number(exact, say)} {unit}"
        case steps.LabelRounding(exact, value, rounding, unit):
            rule = f"21 CFR 101.9{rounding.rule.paragraph}"
            yield f"{rule}: {_number(exact, say)} → {say.number(value)} {unit}"
        case steps.OwnValue(item):
            yield joined(", ", (one for one in (item.source, item.read_on) if one))
        case (
            steps.Subtraction()
            | steps.Estimation()
            | steps.Addition()
            | steps.Division()
            | steps.Reckoning()
            | steps.AsWritten()
        ):
            yield _worked(step, say)
        case steps.EnergyCost() | steps.RestingEnergy() | steps.MinutesOfGap():
            yield _minutes(step, say)
        case (
            steps.ReferenceBody()
            | steps.NeedEquation()
            | steps.NeedRounding()
            | steps.Balance()
            | steps.Leaning()
        ):
            yield _of_day(step, say)
        case _:
            assert_never(step)


def _worked(
    step: steps.Subtraction
    | steps.Estimation
    | steps.Addition
    | steps.Division
    | steps.Reckoning
    | steps.AsWritten,
    say: Say,
) -> str:
    """Arithmetic with the lesson's own numbers."""
    match step:
        case steps.Subtraction(gap, unit):
            return f"{_difference(gap.larger, gap.smaller, gap.size, say)} {unit}"
        case steps.Estimation(near, _):
            return f"≈ {_difference(near.larger, near.smaller, near.gap, say)}"
        case steps.Addition(parts, total):
            return f"{' + '.join(map(say.number, parts))} = {say.number(total)}"
        case steps.Division(gap, count, _):
            per, whole = say.number(count.per), say.number(count.whole)
            left = f" + {say.number(count.left_over)}" if count.left_over else ""
            return f"{say.number(gap)} = {whole} × {per}{left}"
        case steps.Reckoning(parts, names, value):
            if not names:
                held = [_number(part, say) for part in parts if isinstance(part, Fraction)]
                return f"{{{'; '.join(held)}}} → {say.number(value)}"
            told = in_line(part if isinstance(part, str) else _number(part, say) for part in parts)
            return f"{told} = {say.number(value)}" if len(parts) > 1 else ", ".join(names)
        case steps.AsWritten(key):
            return f"{key}:"
        case _:
            assert_never(step)


def _of_day(
    step: steps.ReferenceBody
    | steps.NeedEquation
    | steps.NeedRounding
    | steps.Balance
    | steps.Leaning,
    say: Say,
) -> str:
    """What a day gave and took."""
    match step:
        case steps.ReferenceBody(_, body):
            return f"IOM 2005: {say.number(body.height_cm)} cm, {say.number(body.weight_kg)} kg"
        case steps.NeedEquation(_, need):
            return f"NASEM 2023: {arithmetic(need.equation, say)} = {say.number(need.kcal)} kcal"
        case steps.NeedRounding(need, balance):
            return f"{say.number(need.kcal)} → {say.number(balance.needed)}"
        case steps.Balance(balance, _):
            larger, smaller = (pick(balance.eaten, balance.needed) for pick in (max, min))
            return _difference(larger, smaller, balance.gap, say)
        case steps.Leaning(balance):
            ratio = say.number(to_places(balance.ratio, 2))
            return f"{say.number(balance.eaten)} ÷ {say.number(balance.needed)} = {ratio}"
        case _:
            assert_never(step)


def _minutes(step: steps.EnergyCost | steps.RestingEnergy | steps.MinutesOfGap, say: Say) -> str:
    """What a move takes, for adults."""
    found = step.minutes
    match step:
        case steps.EnergyCost(_, energy):
            named = cited(f"{energy.source} {energy.code}, {found.activity}", say.language)
            return joined(": ", (named, f"{say.number(found.mety)} METy"))
        case steps.RestingEnergy():
            child = found.child
            equation = arithmetic(child.equation, say)
            return f"Schofield 1985, CDC 2000: {equation} = {say.number(child.resting)} kcal"
        case steps.MinutesOfGap():
            minutes = say.number(to_places(found.minutes, 1))
            return f"{arithmetic(found.formula, say)} = {minutes}"
        case _:
            assert_never(step)


def _difference(larger: Decimal, smaller: Decimal, gap: Decimal, say: Say) -> str:
    return f"{say.number(larger)} − {say.number(smaller)} = {say.number(gap)}"


def _number(value: Decimal | Fraction, say: Say) -> str:
    return say.number(as_decimal(Fraction(value), _PLACES))
