"""Values as a United States food label shows them: 21 CFR 101.9(c), by the rule of each measure."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from generator.compute.rounding import to_step
from generator.model.label_rule import LabelRule
from generator.model.measure import Measure


@dataclass(frozen=True, slots=True)
class Rounding:
    """What of a label's rule made a value."""

    rule: LabelRule
    """The measure's."""
    step: int | None
    """Which of the rule's steps, from 0; nothing where so little is shown as 0."""


@dataclass(frozen=True, slots=True)
class Shown:
    """A value as a child sees it, with the rule that made it."""

    value: Decimal
    """In the measure's unit."""
    exact: Fraction
    """The value before rounding, in the same unit."""
    rounding: Rounding | None
    """Nothing for an own value, which its maker rounded."""


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
    return by_rule(measure.entry.label, exact)


def by_rule(rule: LabelRule, exact: Fraction) -> Shown:
    """Round a value as a rule of the label has it.

    Args:
        rule: of 21 CFR 101.9, for an amount or for its share of the Daily Value.
        exact: the value, not negative, in the unit of the rule.
    """
    if exact < rule.zero_below:
        return Shown(Decimal(0), exact, Rounding(rule, None))
    number, step = next(
        (number, step) for number, step in enumerate(rule.steps) if step.serves(exact)
    )
    return Shown(to_step(exact, step.size), exact, Rounding(rule, number))
