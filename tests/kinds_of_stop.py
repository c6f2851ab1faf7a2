"""What tests want to know of the model of a kind of stop."""

from __future__ import annotations

from collections.abc import Iterator
from typing import get_args

from generator.model.base import Frozen
from generator.model.stops.compare import Item


def holds_foods(model: type[Frozen]) -> bool:
    """Whether a food may stand anywhere in a stop."""
    return any(issubclass(one, Item) or holds_foods(one) for one in models_in(model))


def models_in(model: type[Frozen]) -> Iterator[type[Frozen]]:
    """The models that a model's fields hold, one level down."""
    for field in model.model_fields.values():
        yield from held_by(field.annotation)


def held_by(annotation: object) -> Iterator[type[Frozen]]:
    """The models in a type."""
    if isinstance(annotation, type) and issubclass(annotation, Frozen):
        yield annotation
    for inner in get_args(annotation):
        yield from held_by(inner)
