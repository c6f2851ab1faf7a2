"""The keys that a part of a file may have, must have, and the words they take: asked of the model."""

from __future__ import annotations

from enum import Enum

from generator.model.base import Frozen


def needed_keys(model: type[Frozen], loc: tuple[int | str, ...]) -> str:
    """The keys that the part at ``loc`` cannot be without, as they are written; nothing where it has no keys."""
    keys = [
        f"`{field.alias or name}:`"
        for one in _models_at(model, loc)
        for name, field in one.model_fields.items()
        if field.is_required()
    ]
    *most, last = keys or [""]
    return f"{', '.join(most)} and {last}" if most else last


def known_keys(model: type[Frozen], loc: tuple[int | str, ...]) -> list[str]:
    """The keys the part at ``loc`` may have, found by walking the model's own fields."""
    return sorted(
        {
            field.alias or name
            for one in _models_at(model, loc)
            for name, field in one.model_fields.items()
            if name != "kind"
        }
    )


def _models_at(model: type[Frozen], loc: tuple[int | str, ...]) -> list[type[Frozen]]:
    found: list[type[Frozen]] = [model]
    for part in loc:
        if isinstance(part, str) and is_written(part):
            found = [inner for outer in found for inner in _inner_models(outer, part)] or found
    return found


def _inner_models(model: type[Frozen], key: str) -> list[type[Frozen]]:
    for name, field in model.model_fields.items():
        if key in {name, field.alias}:
            return _models_in(field.annotation)
    return []


def _models_in(annotation: object) -> list[type[Frozen]]:
    if isinstance(annotation, type) and issubclass(annotation, Frozen):
        return [annotation]
    return [model for inner in getattr(annotation, "__args__", ()) for model in _models_in(inner)]


def choices(model: type[Frozen], loc: tuple[int | str, ...]) -> list[str]:
    """The words that the key at ``loc`` takes, where only some are taken."""
    *above, key = loc
    return [
        str(member.value)
        for one in _models_at(model, tuple(above))
        for name, field in one.model_fields.items()
        if key in {name, field.alias}
        and isinstance(field.annotation, type)
        and issubclass(field.annotation, Enum)
        for member in field.annotation
    ]


def is_written(part: str | int) -> bool:
    """Whether a step of an error's path is written in the file, and not the name of a type."""
    return isinstance(part, int) or (
        not any(sign in part for sign in "[]()") and part not in _TYPE_NAMES
    )


_TYPE_NAMES = {"decimal", "constrained-decimal", "str", "int", "none"}
