"""Every kind of stop with numbers of its own: the record in its file here. A kind without such a file has none."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from graphlib import TopologicalSorter
from importlib import import_module
from importlib.util import find_spec

from generator.compute.result import WorkedStop
from generator.compute.stops.kind import WorkedKind
from generator.model.stops import STOP_KINDS
from generator.model.stops.base import BaseStop

AnyKind = WorkedKind[BaseStop, WorkedStop]
"""A record whose types are its own affair: a stop and what it came to are always given to their own kind."""


def _records() -> Iterator[AnyKind]:
    for kind in STOP_KINDS:
        module = f"{__package__}.{kind}"
        found = getattr(import_module(module), "KIND", None) if find_spec(module) else None
        if isinstance(
            found, WorkedKind
        ):  # a file without one is named by tests/compute/test_kinds.py
            yield found


def _in_order(kinds: Mapping[str, AnyKind]) -> Iterator[tuple[str, AnyKind]]:
    order = TopologicalSorter({name: kind.after for name, kind in kinds.items()})
    yield from ((name, kinds[name]) for name in order.static_order() if name in kinds)


KINDS = dict(_in_order({kind.name: kind for kind in _records()}))
"""By name, each after those whose numbers it takes."""
