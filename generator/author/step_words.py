"""The steps that lead to a number, in words and as arithmetic."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import assert_never

from generator.compute import steps
from generator.compute.arithmetic import in_line
from generator.compute.label import Rounding
from generator.compute.rounding import to_places
from generator.compute.steps import Step
from generator.model.food import Serving
from generator.model.measure import Unit
from generator.model.wording import FALLBACK


def step_words(step: Step) -> tuple[str, str]:
    """What a step is, in a word or two, and what it says."""
    match step:
        case steps.FromRecord():
            return "record", _record(step)
        case steps.Weighed():
            return "portion", _weighed(step.serving)
        case steps.OfAmount():
            return "amount", _amount(step)
        case steps.LabelRounding():
            return "rounding", _label(step)
        case steps.OwnValue():
            return "record", _own(step)
        case steps.Subtraction():
            return "subtraction", _subtraction(step)
        case steps.Estimation():
            return "estimate", _estimation(step)
        case steps.Addition():
            return "sum", _sum(step)
        case steps.Division():
            return "division", _division(step)
        case steps.AsWritten():
            return "lesson", f"as `{step.key}:` has it"
        case (
            steps.ReferenceBody()
            | steps.NeedEquation()
            | steps.NeedRounding()
            | steps.Balance()
            | steps.Leaning()
        ):
            return _day(step)
        case steps.EnergyCost() | steps.RestingEnergy() | steps.MinutesOfGap():
            return _minutes(step)
        case steps.Reckoning():
            return "answer", _reckoning(step)
        case _:
            assert_never(step)


def plain(exact: Fraction) -> str:
    """Decimal digits when there are not too many of them; the fraction itself when they never end."""
    bottom = exact.denominator
    for prime in (2, 5):
        while bottom % prime == 0:
            bottom //= prime
    if bottom != 1:
        return f"{exact.numerator}/{exact.denominator}"
    return f"{(Decimal(exact.numerator) / Decimal(exact.denominator)).normalize():f}"


def digits(value: Decimal) -> str:
    """A value without needless zeros, whatever an educator wrote: ``3`` for ``3.0``."""
    return f"{value.normalize():f}"


def _record(step: steps.FromRecord) -> str:
    food = step.food
    held = f"{plain(step.per_100g)} {step.unit} in 100 g"
    return f"{food.release}, FDC {food.entry.fdc}, {food.entry.record}: {held}"


def _weighed(serving: Serving) -> str:
    portion = serving.portion
    if portion is None:
        return f"{plain(serving.grams)} g, as the lesson gives it"
    grams_alone = portion.record == f"{portion.grams} g"
    amount = portion.name(FALLBACK).words if grams_alone else portion.record
    weighs = f"{amount} weighs {portion.grams} g"
    if serving.times == 1:
        return weighs
    return f"{weighs}; {plain(serving.times)} × {portion.grams} g = {plain(serving.grams)} g"


def _amount(step: steps.OfAmount) -> str:
    grams, exact = plain(step.grams), plain(step.exact)
    return f"{plain(step.per_100g)} × {grams} ÷ 100 = {exact} {step.unit}"


def _label(step: steps.LabelRounding) -> str:
    rounding, unit = step.rounding, step.unit
    rounded = f"{plain(step.exact)} → {step.value} {unit}"
    said = _served(rounding, unit)
    return f"21 CFR 101.9{rounding.rule.paragraph}: {said}; half goes up: {rounded}"


def _served(rounding: Rounding, unit: Unit) -> str:
    """What a label's rule says for a value: how finely it is shown, and in which range."""
    rule, number = rounding.rule, rounding.step
    if number is None:
        return f"under {plain(rule.zero_below)} {unit} is shown as 0"
    step, before = rule.steps[number], rule.steps[number - 1] if number else None
    said = f"to the nearest {step.size} {unit}"
    if step.until is not None:
        return f"{said} {'up to' if step.limit_is_in else 'below'} {plain(step.until)}"
    if before is None or before.until is None:
        return said
    return f"{said} {'above' if before.limit_is_in else 'from'} {plain(before.until)}"


def _own(step: steps.OwnValue) -> str:
    item = step.item
    return (
        f"own value: {item.source}{f', read on {item.read_on}' if item.read_on else ''}, as printed"
    )


def _sum(step: steps.Addition) -> str:
    if len(step.parts) == 1:
        return f"{digits(step.total)}, the shown value of the only food"
    return f"{' + '.join(map(digits, step.parts))} = {digits(step.total)}, of shown values"


def _subtraction(step: steps.Subtraction) -> str:
    gap, unit = step.gap, step.unit
    unrounded = f"before rounding the gap is {plain(abs(gap.exact))} {unit}"
    worked = f"{digits(gap.larger)} − {digits(gap.smaller)} = {digits(gap.size)} {unit}"
    return f"{worked}, between shown values; {unrounded}"


def _division(step: steps.Division) -> str:
    count = step.count
    left = f", {digits(count.left_over)} {step.unit} left over" if count.left_over else ""
    return f"{digits(step.gap)} ÷ {digits(count.per)} = {count.whole}{left}"


def _estimation(step: steps.Estimation) -> str:
    near, gap = step.rounded, step.gap
    worked = f"{digits(near.larger)} − {digits(near.smaller)} = {digits(near.gap)}"
    numbers = f"{digits(gap.larger)} and {digits(gap.smaller)}"
    return f"{numbers} to the nearest {digits(near.step)}: {worked}"


def _reckoning(step: steps.Reckoning) -> str:
    if not step.names:
        held = ", ".join(plain(part) for part in step.parts if isinstance(part, Fraction))
        return f"one of {held}: {digits(step.value)}"
    worked = in_line(part if isinstance(part, str) else plain(part) for part in step.parts)
    named = f"from {', '.join(dict.fromkeys(step.names))}"
    return f"{worked} = {digits(step.value)}, {named}" if len(step.parts) > 1 else named


def _day(
    step: steps.ReferenceBody
    | steps.NeedEquation
    | steps.NeedRounding
    | steps.Balance
    | steps.Leaning,
) -> tuple[str, str]:
    match step:
        case steps.ReferenceBody(person, body):
            says = f"reference {person.sex}: {body.height_cm} cm, {body.weight_kg} kg"
            return "record", f"{says} (IOM 2005, Dietary Reference Intakes for Energy)"
        case steps.NeedEquation(person, need):
            of = f"{person.sex} of {person.age} years, {person.activity}"
            return "equation", f"NASEM 2023, {of}: {need.equation} = {need.kcal} kcal a day"
        case steps.NeedRounding(need, balance):
            return "rounding", f"to the nearest 10 kcal: {need.kcal} → {balance.needed}"
        case steps.Balance(balance, exact):
            larger, smaller = (pick(balance.eaten, balance.needed) for pick in (max, min))
            worked = f"{digits(larger)} − {digits(smaller)} = {digits(balance.gap)}"
            says = f"before rounding the gap is {plain(exact)} kcal"
            return "subtraction", f"{worked}, between shown values; {says}"
        case steps.Leaning(balance):
            eaten, needed = digits(balance.eaten), digits(balance.needed)
            ratio = f"{eaten} ÷ {needed} = {to_places(balance.ratio, 2)}"
            even = f"up to {digits(balance.even_within)} kcal is even"
            return "lean", f"{ratio}: {balance.lean}; {even}"
        case _:
            assert_never(step)


def _minutes(
    step: steps.EnergyCost | steps.RestingEnergy | steps.MinutesOfGap,
) -> tuple[str, str]:
    found = step.minutes
    child = found.child
    match step:
        case steps.EnergyCost(_, energy):
            source = f"{energy.source}, {energy.code}, status {energy.status}"
            says = f"{found.activity}: {found.mety} METy at {child.age_years} years ({source})"
            return "record", says
        case steps.RestingEnergy():
            boy, girl = child.weights_kg
            says = f"mean of a boy of {boy} kg and a girl of {girl} kg (CDC 2000 medians)"
            return (
                "resting energy",
                f"{says}, Schofield 1985: {child.equation} = {child.resting} kcal a day",
            )
        case steps.MinutesOfGap():
            minutes = to_places(found.minutes, 1)
            return "minutes", f"{found.formula} = {minutes}; for teaching notes only"
        case _:
            assert_never(step)
