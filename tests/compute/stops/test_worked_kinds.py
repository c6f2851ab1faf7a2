"""Whatever a kind of stop has worked out stands in its own file, and every file there is a kind's whole record."""

from __future__ import annotations

from dataclasses import fields
from pkgutil import iter_modules

import pytest

from generator.compute import stops
from generator.compute.stops.kind import WorkedKind
from generator.compute.stops.kinds import KINDS
from generator.model.stops import STOP_KINDS
from tests.kinds_of_stop import holds_foods

SHARED = {"held", "kind", "kinds"}
"""What no kind has alone."""


def test_every_file_ends_in_the_record_of_its_kind() -> None:
    files = {module.name for module in iter_modules(stops.__path__)} - SHARED
    assert files == KINDS.keys()
    assert all(kind.stop is STOP_KINDS[name] for name, kind in KINDS.items())


def test_each_kind_comes_after_those_whose_numbers_it_takes() -> None:
    order = list(KINDS)
    for name, kind in KINDS.items():
        assert set(kind.after) <= set(order[: order.index(name)]), name


@pytest.mark.parametrize("kind", STOP_KINDS)
def test_a_kind_that_holds_foods_has_their_numbers(kind: str) -> None:
    assert not holds_foods(STOP_KINDS[kind]) or kind in KINDS


@pytest.mark.parametrize("part", [field.name for field in fields(WorkedKind)])
def test_no_part_of_a_record_may_be_left_out(part: str) -> None:
    whole = next(iter(KINDS.values()))
    parts = {field.name: getattr(whole, field.name) for field in fields(whole)}
    del parts[part]
    with pytest.raises(TypeError, match=part):
        WorkedKind(**parts)
