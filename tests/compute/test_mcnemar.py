"""McNemar's test against published tables, and against scipy's binomial test.

R: read at its source; S: in a transcription; C: computed from the data of the table (references of the
project, section 9.1).
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from scipy.stats import binom, binomtest

from generator.compute.mcnemar import FEWEST, mcnemar

PUBLISHED = [
    # Cavo 2012: 59, 6 / 16, 80; tests of the CRAN package contingencytables (R)
    (6, 16, "0.052479", "0.034690"),
    # Bentur 2009: 1, 1 / 7, 12; data of contingencytables (R), values C
    (1, 7, "0.070312", "0.039062"),
    # 21, 2 / 9, 12; vignette exactMcNemar of the CRAN package exact2x2 (data R), values C
    (2, 9, "0.065430", "0.038574"),
    # b = 12, c = 5 (S); exact 0.1435 (S), 0.143463 C
    (12, 5, "0.143463", "0.096252"),
]


@pytest.mark.parametrize(("worse", "better", "exact", "mid_p"), PUBLISHED)
def test_published_tables(worse: int, better: int, exact: str, mid_p: str) -> None:
    """Values are cut or rounded at the sixth place where they were published."""
    chance = mcnemar(worse, better)
    assert float(chance.exact) == pytest.approx(float(exact), abs=1e-6)
    assert float(chance.mid_p) == pytest.approx(float(mid_p), abs=1e-6)
    assert mcnemar(better, worse) == chance


@pytest.mark.parametrize("changed", [1, 2, 5, 6, 17, 40, 400])
def test_as_scipy_has_it(changed: int) -> None:
    for worse in range(changed + 1):
        chance = mcnemar(worse, changed - worse)
        fewer = min(worse, changed - worse)
        exact = binomtest(worse, changed, 0.5).pvalue
        assert float(chance.exact) == pytest.approx(exact, rel=1e-9)
        mid_p = min(1, 2 * binom.cdf(fewer, changed, 0.5) - binom.pmf(fewer, changed, 0.5))
        assert float(chance.mid_p) == pytest.approx(mid_p, rel=1e-9)


def test_nobody_changed() -> None:
    assert mcnemar(0, 0).exact == mcnemar(0, 0).mid_p == 1


def test_with_five_the_exact_p_cannot_come_below_a_twentieth() -> None:
    """2 / 2⁵ = 0.0625; with six it can: 2 / 2⁶ = 0.03125."""
    assert mcnemar(0, FEWEST - 1).exact == Fraction(2, 32)
    assert mcnemar(0, FEWEST).exact == Fraction(2, 64)


def test_the_more_changed_at_one_difference_the_larger_the_p() -> None:
    """What the ends of hidden counts are told by."""
    for gain in range(15):
        chances = [mcnemar(worse, worse + gain) for worse in range(40)]
        assert [one.exact for one in chances] == sorted(one.exact for one in chances)
        assert [one.mid_p for one in chances] == sorted(one.mid_p for one in chances)
