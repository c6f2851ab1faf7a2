"""Every kind of stop as the pages know it: the record that each file of ``model/stops/`` has here."""

from __future__ import annotations

from collections.abc import Iterator
from importlib import import_module

from generator.model.stops import STOP_KINDS
from generator.model.stops.base import BaseStop
from generator.present.stops.in_lesson import StopInLesson
from generator.present.stops.kind import StopKind
from generator.present.views.stop import StopView

AnyKind = StopKind[BaseStop, StopView]
"""A record whose types are its own affair: a stop and its view are always given to their own kind."""


def record_of(kind: str) -> AnyKind | str:
    """The record of a kind, or in a sentence what is wrong with it."""
    try:
        found = getattr(import_module(f"{__package__}.{kind}"), "KIND", None)
    except (ImportError, TypeError) as error:  # no such file, or a part of the record is left out
        return str(error)
    if not isinstance(found, StopKind):
        return "it does not end in a record `KIND = StopKind(...)`"
    return found if found.name == kind else f"its record is that of `{found.name}`"


def _records() -> Iterator[AnyKind]:
    for kind in STOP_KINDS:
        record = record_of(kind)
        if isinstance(record, StopKind):  # what is not is told by `missing_parts`
            yield record


KINDS = tuple(_records())
_BY_NAME = {kind.name: kind for kind in KINDS}


def kind_of(stop: StopInLesson[BaseStop] | StopView) -> AnyKind:
    """The kind of a stop, or of its view."""
    return _BY_NAME[stop.stop.kind if isinstance(stop, StopInLesson) else stop.head.kind]
