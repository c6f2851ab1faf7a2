"""The shape of a lesson file as a JSON Schema, for editors that complete and check while typing."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import cast

from generator.author.field_docs import describe_fields
from generator.model.lesson import LessonHead
from generator.model.stops import STOP_KINDS
from generator.model.stops.move import REST

Schema = dict[str, object]
_BESIDE = ("id", "title", "say")
"""Keys that may also stand beside a stop's kind."""


def lesson_schema(foods: Iterable[str], moves: Iterable[str]) -> str:
    """JSON Schema, draft 2020-12, of ``lesson.yaml``.

    Args:
        foods: ids of the foods a lesson may name; an editor completes them.
        moves: likewise.
    """
    describe_fields()
    schema: Schema = {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "A lesson file",
    }
    head = LessonHead.model_json_schema(by_alias=True)
    definitions = _take(head, "$defs")
    kinds = []
    for kind, model in STOP_KINDS.items():
        inner = model.model_json_schema(by_alias=True)
        definitions |= _take(inner, "$defs")
        definitions[f"{kind}-stop"] = _without_kind(inner)
        kinds.append(_stop(kind, inner))
    definitions["food"] = {"enum": sorted(foods)}
    definitions["move"] = {"enum": sorted({*moves, REST})}
    _name_entries(definitions)
    properties = cast("Schema", head["properties"])
    properties["stops"] = {"type": "array", "minItems": 1, "items": {"oneOf": kinds}}
    head["required"] = [*cast("list[str]", head["required"]), "stops"]
    whole = (
        schema
        | {key: value for key, value in head.items() if key != "title"}
        | {"$defs": definitions}
    )
    return json.dumps(whole, indent=1, ensure_ascii=False) + "\n"


def _name_entries(definitions: Schema) -> None:
    """Let every key that names a food or a move take those there are."""
    for definition in definitions.values():
        properties = cast("Schema", cast("Schema", definition).get("properties", {}))
        if "food" in properties:
            held = cast("Schema", properties["food"])
            properties["food"] = {
                "$ref": "#/$defs/food",
                "description": held.get("description", ""),
            }
        if "moves" in properties:
            cast("Schema", properties["moves"])["items"] = {"$ref": "#/$defs/move"}


def _stop(kind: str, inner: Schema) -> Schema:
    """A list entry: the kind's key, and beside it what every stop may say."""
    properties = cast("Schema", inner["properties"])
    beside = {key: properties[key] for key in _BESIDE}
    return {
        "type": "object",
        "properties": {kind: {"$ref": f"#/$defs/{kind}-stop"}, **beside},
        "required": [kind],
        "additionalProperties": False,
    }


def _without_kind(inner: Schema) -> Schema:
    properties = {
        key: value for key, value in cast("Schema", inner["properties"]).items() if key != "kind"
    }
    return {**inner, "properties": properties}


def _take(schema: Schema, key: str) -> Schema:
    return cast("Schema", schema.pop(key, {}))
