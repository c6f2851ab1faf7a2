"""Values as a United States food label shows them: 21 CFR 101.9(c), by the rule of each measure."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.rounding import to_step
from generator.model.label_rule import LabelRule, Step
from generator.model.measure import Measure


@dataclass(frozen=True, slots=True)
class Shown:
    """A value as a child sees it, with the rule that made it."""

    value: Decimal
    """In the measure's unit."""
    exact: Fraction
    """The value before rounding, in the same unit."""
    rule: str
    """Paragraph of 21 CFR 101.9 and what it says for this value; of an own value, where it was read."""


def label_value(measure: Measure, exact: Fraction) -> Shown:
    """Round a value of one portion as 21 CFR 101.9(c) has it.

    Args:
        measure: what the value is of; it brings the unit and the rule.
        exact: the value, not negative.

    Raises:
        ValueError: the value is negative.
    """
    if exact < 0:
        raise ValueError(f"a food cannot hold {exact} {measure.unit}")
    rule = measure.entry.label
    if exact < rule.zero_below:
        said = f"under {_plain(rule.zero_below)} {measure.unit} is shown as 0"
        return Shown(Decimal(0), exact, f"{rule.paragraph}: {said}")
    number, step = _step(rule, exact)
    said = f"to the nearest {step.size} {measure.unit}{_range(rule, number)}"
    return Shown(to_step(exact, step.size), exact, f"{rule.paragraph}: {said}")


def _step(rule: LabelRule, exact: Fraction) -> tuple[int, Step]:
    """The step that serves a value, and which of the rule's it is."""
    return next((number, step) for number, step in enumerate(rule.steps) if step.serves(exact))


def _range(rule: LabelRule, number: int) -> str:
    """Where a step is used, in words: `` up to 50``; empty where the rule has but one."""
    step = rule.steps[number]
    if step.until is not None:
        return f" {'up to' if step.limit_is_in else 'below'} {_plain(step.until)}"
    if number == 0:
        return ""
    before = rule.steps[number - 1]
    return f" {'above' if before.limit_is_in else 'from'} {_plain(before.until or Fraction(0))}"


def _plain(limit: Fraction) -> str:
    return f"{float(limit):g}"
