"""Minutes of a move come from children's published values, or do not come at all."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest

from generator.compute.move_minutes import move_minutes, typical_child
from generator.model.grades import parse_grades
from generator.model.move import Move
from tests.worked import library


def move_with(code: str) -> Move:
    """The first move of the library with this row of the Youth Compendium."""
    for move in library().moves.values():
        if move.youth_energy and move.youth_energy.code.startswith(code):
            return move
    pytest.fail(f"the library has no move with the row {code}")


@pytest.mark.parametrize(
    ("grades", "age"),
    # Common practice, no source: grade g is g + 5 to g + 6 years.
    [("K", 5), ("K-2", 6), ("2", 7), ("3-5", 9), ("4", 9), ("6-8", 12)],
)
def test_the_typical_child(grades: str, age: int) -> None:
    assert typical_child(parse_grades(grades)).age_years == age


def test_rest_of_the_typical_child() -> None:
    """Nine years: CDC medians 28.68 and 29.14 kg [R] in Schofield's rows of 3 to 10 [S]."""
    child = typical_child(parse_grades("3-5"))
    boy = Decimal("22.706") * Decimal("28.68") + Decimal("504.3")
    girl = Decimal("20.315") * Decimal("29.14") + Decimal("485.9")
    assert child.weights_kg == (Decimal("28.68"), Decimal("29.14"))
    assert child.resting == (boy + girl) / 2


def test_minutes_by_hand() -> None:
    """45 kcal of push-ups, 3.9 METy at 6 to 9 years [S]: 45 ÷ (2.9 × 1116.69 ÷ 1440) = 20.01."""
    found = move_minutes(move_with("30300"), Decimal(45), parse_grades("3-5"))
    assert found is not None
    assert found.mety == Decimal("3.9")
    assert float(found.minutes) == pytest.approx(20.01, abs=0.005)
    assert found.shown == 20


def test_a_count_is_no_minute_count() -> None:
    """32 counts stand for 320 kcal in a game; really moved, it takes hours: why the notes say so."""
    found = move_minutes(move_with("30300"), Decimal(320), parse_grades("3-5"))
    assert found is not None
    assert found.minutes > 120


def test_the_formula_shows_its_numbers() -> None:
    found = move_minutes(move_with("30300"), Decimal(45), parse_grades("3-5"))
    assert found is not None
    day = f"{found.child.resting:.2f} kcal a day ÷ 1440 minutes a day"
    assert found.formula == f"45 kcal ÷ ((3.9 METy − 1) × {day})"


def test_nothing_is_computed_where_nothing_is_published() -> None:
    unpublished = [move for move in library().moves.values() if move.youth_energy is None]
    assert unpublished
    for move in unpublished:  # an adult's MET is of no help to a child
        assert move_minutes(move, Decimal(45), parse_grades("3-5")) is None


def test_kindergarten_alone_is_younger_than_the_published_ages() -> None:
    assert move_minutes(move_with("30300"), Decimal(45), parse_grades("K")) is None


def test_a_little_is_never_shown_as_none() -> None:
    found = move_minutes(move_with("30300"), Decimal("0.5"), parse_grades("3-5"))
    assert found
    assert 0 < found.minutes < Fraction(1, 2)
    assert found.shown == 1


def test_no_gap_takes_no_minutes() -> None:
    found = move_minutes(move_with("30300"), Decimal(0), parse_grades("3-5"))
    assert found is not None
    assert found.minutes == 0


def test_a_negative_gap_is_refused() -> None:
    with pytest.raises(ValueError, match="never negative"):
        move_minutes(move_with("30300"), Decimal(-1), parse_grades("3-5"))


def test_adults_have_another_unit() -> None:
    """A fitness body's worked example [R]: 68 kg at 10 MET use 10 × 3.5 × 68 ÷ 200 = 11.9 kcal a minute.

    The same figure read as METy with a child's rest gives less than half: the units must not mix.
    """
    adult = Decimal(10) * Decimal("3.5") * 68 / 200
    assert adult == Decimal("11.9")
    assert adult * 30 == 357
    child = 10 * typical_child(parse_grades("6-8")).resting / 1440
    assert child < adult
