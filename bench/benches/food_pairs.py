"""How long `foods pairs` looks through ten thousand pairs of the library: values, trading, counts and caps."""

from __future__ import annotations

import time
from collections.abc import Iterator
from decimal import Decimal
from statistics import median

from bench.measuring.process import ROOT
from bench.measuring.row import Case, NothingMeasuredError, Row, row
from generator.compute.offers import offers
from generator.compute.pair_wishes import PairWishes
from generator.compute.pairing import best, pairs
from generator.model.grades import parse_grades
from generator.model.measure import Measure
from generator.read.library import read_library

PAIRS = 10_000
FEW = 60
"""Foods that are looked through where it is to be small."""
WISHES = PairWishes(
    Measure.ENERGY, grades=parse_grades("3-5"), per=Decimal(10), most_counts=1000, left=Decimal(0)
)


def rows(case: Case) -> Iterator[Row]:
    """One row: all pairs of the library are looked at and ranked, told per ten thousand."""
    foods = tuple(read_library(ROOT).foods.values())[: FEW if case.small else None]
    least = 1 if case.small else PAIRS
    taken = []
    for _ in range(case.runs):
        began = time.perf_counter()
        offered = offers(foods, Measure.ENERGY)
        found = tuple(pairs(offered, WISHES))
        best(found, 5)
        taken.append(time.perf_counter() - began)
        if len(found) < least:
            raise NothingMeasuredError(f"only {len(found)} pairs had what was asked")
    looked_at = len(offered) * (len(offered) - 1) // 2
    yield row("pairs", median(taken) * PAIRS / looked_at, f"of {looked_at:,}")
