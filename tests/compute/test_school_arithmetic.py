"""What a gap or a count asks for, and from which grade on.

Codes and grades: Common Core State Standards for Mathematics (2010). 2.NBT.B.7 as listed in
references.md 8 (S); the others from memory (M).
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from generator.compute.school_arithmetic import dividing, subtracting


@pytest.mark.parametrize(
    ("larger", "smaller", "grade", "code"),
    [
        ("9", "4", 0, "K.OA.A.2"),
        ("16", "9", 1, "1.OA.C.6"),
        ("20", "3", 1, "1.OA.C.6"),
        ("36", "9", 2, "2.NBT.B.5"),
        ("410", "90", 2, "2.NBT.B.7"),
        ("1000", "90", 2, "2.NBT.B.7"),
        ("1200", "770", 4, "4.NBT.B.4"),
        ("4.5", "2", 5, "5.NBT.B.7"),
    ],
)
def test_a_gap(larger: str, smaller: str, grade: int, code: str) -> None:
    expected = subtracting(Decimal(larger), Decimal(smaller))
    assert (expected.grade, expected.code) == (grade, code)


@pytest.mark.parametrize(
    ("gap", "per", "grade", "code"),
    [
        ("320", "10", 2, "2.NBT.A.1"),
        ("7", "2", 2, "2.OA.C.3"),
        ("24", "4", 3, "3.OA.C.7"),
        ("27", "4", 4, "4.NBT.B.6"),
        ("120", "4", 4, "4.NBT.B.6"),
        ("270", "20", 5, "5.NBT.B.6"),
        ("325", "25", 5, "5.NBT.B.6"),
    ],
)
def test_a_count(gap: str, per: str, grade: int, code: str) -> None:
    expected = dividing(Decimal(gap), Decimal(per))
    assert expected is not None
    assert (expected.grade, expected.code) == (grade, code)


def test_a_count_of_ones_is_no_division() -> None:
    assert dividing(Decimal(32), Decimal(1)) is None
