"""Every kind of stop that has something to look up: the record in its file here. A kind without such a file has nothing."""

from __future__ import annotations

from collections.abc import Iterator
from importlib import import_module
from importlib.util import find_spec

from generator.model.stops import STOP_KINDS
from generator.model.stops.base import BaseStop
from generator.read.stops.kind import ReadKind

AnyKind = ReadKind[BaseStop]
"""A record whose types are its own affair: a stop is always given to its own kind."""


def _records() -> Iterator[AnyKind]:
    for kind in STOP_KINDS:
        module = f"{__package__}.{kind}"
        found = getattr(import_module(module), "KIND", None) if find_spec(module) else None
        if isinstance(found, ReadKind):  # a file without one is named by tests/read/stops
            yield found


KINDS = {kind.name: kind for kind in _records()}
