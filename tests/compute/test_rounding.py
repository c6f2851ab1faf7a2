"""One place decides a tie, and no other number of the program is rounded by chance."""

from __future__ import annotations

import ast
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.rounding import to_places, to_step, whole

GENERATOR = Path(__file__).parents[2] / "generator"


@pytest.mark.parametrize("steps", range(6))
def test_half_a_step_goes_up_and_the_least_bit_below_half_goes_down(steps: int) -> None:
    """Half up and not to even: implementer's reading, the rule's text says nothing (status S)."""
    half = Fraction(5 * steps) + Fraction(5, 2)
    assert to_step(half, Decimal(5)) == 5 * (steps + 1)
    assert to_step(half - Fraction(1, 10**30), Decimal(5)) == 5 * steps


@given(st.fractions(0, 10_000))
def test_below_zero_is_the_mirror_of_above(exact: Fraction) -> None:
    assert to_step(-exact, Decimal("0.1")) == -to_step(exact, Decimal("0.1"))


@pytest.mark.parametrize(
    ("exact", "places", "said"),
    [("1/4", 1, "0.3"), ("1/2", 2, "0.50"), ("5/2", 0, "3"), ("-1/4", 1, "-0.3"), ("0", 1, "0.0")],
)
def test_places(exact: str, places: int, said: str) -> None:
    assert str(to_places(Fraction(exact), places)) == said


def test_whole() -> None:
    assert [whole(Fraction(halves, 2)) for halves in range(6)] == [0, 1, 1, 2, 2, 3]


def test_nothing_else_rounds() -> None:
    """Python's ``round`` and ``quantize`` without a direction send half of all ties down."""
    found = [
        f"{file.relative_to(GENERATOR)}:{node.lineno}"
        for file in sorted(GENERATOR.rglob("*.py"))
        for node in ast.walk(ast.parse(file.read_text("utf-8")))
        if isinstance(node, ast.Call) and _rounds(node)
    ]
    assert found == []


def _rounds(call: ast.Call) -> bool:
    name = call.func.id if isinstance(call.func, ast.Name) else getattr(call.func, "attr", "")
    given = len(call.args) + len(call.keywords)
    return (
        name == "round"
        or (name == "quantize" and given < 2)
        or (name == "to_integral_value" and not given)
    )
