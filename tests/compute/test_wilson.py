"""Wilson's interval against Newcombe's cases, and against scipy."""

from __future__ import annotations

import pytest
from scipy.stats import binomtest

from generator.compute.wilson import wilson


@pytest.mark.parametrize(
    ("count", "of", "low", "high"),
    [
        # Newcombe 1998, Stat Med 17:857-872, his four cases (M for the set), limits C
        (81, 263, "0.2553", "0.3662"),
        (15, 148, "0.0624", "0.1605"),
        (0, 20, "0.0000", "0.1611"),
        (1, 29, "0.0061", "0.1718"),
        # 23 of 60 is a published example (S); limits C
        (23, 60, "0.2709", "0.5098"),
    ],
)
def test_published_cases(count: int, of: int, low: str, high: str) -> None:
    interval = wilson(count, of)
    assert (f"{interval.low:.4f}", f"{interval.high:.4f}") == (low, high)


@pytest.mark.parametrize("of", [1, 2, 10, 61, 1000])
def test_as_scipy_has_it(of: int) -> None:
    for count in range(0, of + 1, max(1, of // 40)):
        interval = wilson(count, of)
        other = binomtest(count, of).proportion_ci(0.95, method="wilson")
        assert float(interval.low) == pytest.approx(other.low, abs=1e-6)
        assert float(interval.high) == pytest.approx(other.high, abs=1e-6)


def test_none_and_all_end_where_shares_end() -> None:
    assert wilson(0, 7).low == 0
    assert wilson(7, 7).high == 1
