"""Whatever a kind of stop needs of reading stands in its own file, and every file there is a kind's whole record."""

from __future__ import annotations

from dataclasses import fields
from pkgutil import iter_modules

import pytest

from generator.model.stops import STOP_KINDS
from generator.read import stops
from generator.read.stops.kind import ReadKind
from generator.read.stops.kinds import KINDS
from tests.kinds_of_stop import holds_foods

SHARED = {"items", "kind", "kinds"}
"""What no kind has alone."""


def test_every_file_ends_in_the_record_of_its_kind() -> None:
    files = {module.name for module in iter_modules(stops.__path__)} - SHARED
    assert files == KINDS.keys()
    assert all(kind.stop is STOP_KINDS[name] for name, kind in KINDS.items())


@pytest.mark.parametrize("kind", STOP_KINDS)
def test_a_kind_that_holds_foods_looks_them_up(kind: str) -> None:
    assert not holds_foods(STOP_KINDS[kind]) or kind in KINDS


@pytest.mark.parametrize("part", [field.name for field in fields(ReadKind)])
def test_no_part_of_a_record_may_be_left_out(part: str) -> None:
    whole = next(iter(KINDS.values()))
    parts = {field.name: getattr(whole, field.name) for field in fields(whole)}
    del parts[part]
    with pytest.raises(TypeError, match=part):
        ReadKind(**parts)
