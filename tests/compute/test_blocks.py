"""Base-ten blocks make the number they stand for. Common practice, no source."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from generator.compute.blocks import Blocks, to_blocks


@given(st.integers(0, 200_000).map(lambda tenths: Decimal(tenths) / 10))
def test_blocks_make_the_number(value: Decimal) -> None:
    laid = to_blocks(value)
    assert laid.value == value
    assert 0 <= laid.tens <= 9
    assert 0 <= laid.ones <= 9
    assert 0 <= laid.tenths <= 9


def test_a_number_is_laid_with_the_fewest_blocks() -> None:
    assert to_blocks(Decimal("1420.5")) == Blocks(14, 2, 0, tenths=5)


@given(st.integers(0, 2_000).map(lambda tens: tens * 10))
def test_dividing_by_ten_is_counting_the_tens(value: int) -> None:
    laid = to_blocks(Decimal(value))
    assert laid.hundreds * 10 + laid.tens == value // 10


@pytest.mark.parametrize("value", ["-1", "-0.5", "0.33", "2.25"])
def test_what_no_block_stands_for_is_refused(value: str) -> None:
    with pytest.raises(ValueError, match="cannot be laid"):
        to_blocks(Decimal(value))
