"""What a model refuses, said in plain words at the place it was written."""

from __future__ import annotations

from difflib import get_close_matches
from typing import TypeVar

from pydantic import ValidationError
from pydantic_core import ErrorDetails, to_json

from generator.model.base import Frozen
from generator.model.places import Path, Places
from generator.problems import Problem
from generator.read.source import Data

Model = TypeVar("Model", bound=Frozen)


def validate(
    model: type[Model], data: Data, places: Places, base: Path = ()
) -> Model | list[Problem]:
    """Make a model of data that stands at ``base`` in its file, or say all that is wrong with it."""
    try:
        # JSON mode: a list may become a tuple and a word an enum member, and nothing else is bent.
        return model.model_validate_json(to_json(data))
    except ValidationError as error:
        details = [detail for detail in error.errors(include_url=False) if not _echo(detail)]
        misspelled = {
            (*detail["loc"][:-1], _meant(model, detail))
            for detail in details
            if detail["type"] == "extra_forbidden"
        }
        return [
            _problem(model, detail, places, base)
            for detail in details
            if detail["loc"] not in misspelled
        ]


def did_you_mean(word: str, known: list[str]) -> str:
    """A hint naming the nearest known word, or the first few when none is near."""
    near = get_close_matches(word.lower(), known, n=1, cutoff=0.6)
    if near:
        return f"did you mean `{near[0]}`?"
    listed = ", ".join(f"`{name}`" for name in sorted(known)[:8])
    return f"it can be {listed}" + (" …" if len(known) > 8 else "")


def _meant(model: type[Frozen], detail: ErrorDetails) -> str:
    """The key an unknown key was meant for: that one is then misspelled, and not missing as well."""
    near = get_close_matches(
        str(detail["loc"][-1]).lower(), _known_keys(model, detail["loc"][:-1]), n=1, cutoff=0.6
    )
    return near[0] if near else ""


def _echo(detail: ErrorDetails) -> bool:
    """Whether the error is a union's second voice: `value or no value` complains once for each."""
    return (
        detail["type"] == "literal_error"
        and len(detail["loc"]) > 1
        and str(detail["loc"][-1]).startswith("literal")
    )


def _problem(model: type[Frozen], detail: ErrorDetails, places: Places, base: Path) -> Problem:
    path = base + tuple(part for part in detail["loc"] if _written(part))
    kind, context = detail["type"], detail.get("ctx", {})
    name = _name(path)
    if kind == "extra_forbidden":
        known = _known_keys(model, detail["loc"][:-1])
        return Problem(
            places.key(*path),
            f"`{path[-1]}` is not a key that belongs here",
            did_you_mean(str(path[-1]), known),
        )
    if kind == "missing":
        around = path[:-1]
        return Problem(
            places.at(*around), f"`{path[-1]}:` is missing", f"add `{path[-1]}:` {_inside(around)}"
        )
    place = places.at(*path)
    if kind == "value_error":
        what, _, hint = str(context["error"]).partition(": ")
        return Problem(place, f"{name} {what}", hint)
    if kind in {"enum", "literal_error"}:
        known = [
            part.strip(" '") for part in str(context["expected"]).replace(" or ", ", ").split(",")
        ]
        return Problem(
            place,
            f"{name} cannot be `{detail['input']}`",
            did_you_mean(str(detail["input"]), known),
        )
    what, hint = _plain(kind, context, detail["input"])
    return Problem(place, f"{name} {what}", hint)


def _plain(kind: str, context: dict[str, object], given: object) -> tuple[str, str]:
    """Sentence and way out for the errors that need no more than their own numbers."""
    shown = f"`{given}`" if isinstance(given, str | int | float | bool) else "this"
    match kind:
        case "string_type":
            return (
                ("is empty", "write the text after the colon")
                if given is None
                else (f"must be words, not {shown}", "put it in quotes")
            )
        case "string_too_short":
            return "is empty", "write the text after the colon"
        case "string_pattern_mismatch":
            return (
                f"cannot be {shown}",
                "use small letters, digits and single hyphens, such as `river-lunch`",
            )
        case "string_too_long":
            return "is too long", f"use at most {context['max_length']} characters"
        case "int_type" | "int_parsing" | "int_from_float":
            return f"must be a whole number, not {shown}", "write it in digits"
        case "decimal_type" | "decimal_parsing" | "finite_number":
            return f"must be a number, not {shown}", "write it in digits, with a point for decimals"
        case "greater_than" | "greater_than_equal":
            limit = context.get("gt", context.get("ge"))
            return (
                f"is {shown}, which is too small",
                f"it must be {'more than' if 'gt' in context else 'at least'} {limit}",
            )
        case "less_than" | "less_than_equal":
            limit = context.get("lt", context.get("le"))
            return f"is {shown}, which is too large", f"it must be at most {limit}"
        case "too_short":
            return "has too few entries", f"it needs at least {context['min_length']}"
        case "too_long":
            return "has too many entries", f"it takes at most {context['max_length']}"
        case "tuple_type" | "list_type":
            return "must be a list", "write each entry on a line of its own after `- `"
        case "model_type" | "dict_type" | "mapping_type":
            return "must be made of keys and values", "write `key: value` pairs below it"
        case "bool_type" | "bool_parsing":
            return f"must be true or false, not {shown}", "write true or false"
        case _:
            return f"cannot be {shown}", "look at the lesson file reference"


def _written(part: str | int) -> bool:
    """Whether a step of an error's path is written in the file, and not the name of a type."""
    return isinstance(part, int) or (
        not any(sign in part for sign in "[]()") and part not in _TYPE_NAMES
    )


_TYPE_NAMES = {"decimal", "constrained-decimal", "str", "int", "none"}


def _name(path: Path) -> str:
    """How a value is called in a sentence: its key, or its number in the list of its key."""
    keys = [part for part in path if isinstance(part, str)]
    if not keys:
        return "this"
    last = path[-1]
    return f"`{keys[-1]}`" if isinstance(last, str) else f"entry {last + 1} of `{keys[-1]}`"


def _inside(path: Path) -> str:
    return f"inside {_name(path)}" if path else "at the top of the file"


def _known_keys(model: type[Frozen], loc: tuple[int | str, ...]) -> list[str]:
    """The keys the part at ``loc`` may have, found by walking the model's own fields."""
    found: list[type[Frozen]] = [model]
    for part in loc:
        if isinstance(part, str) and _written(part):
            found = [inner for outer in found for inner in _inner_models(outer, part)] or found
    return sorted(
        {
            field.alias or name
            for one in found
            for name, field in one.model_fields.items()
            if name != "kind"
        }
    )


def _inner_models(model: type[Frozen], key: str) -> list[type[Frozen]]:
    for name, field in model.model_fields.items():
        if key in {name, field.alias}:
            return _models_in(field.annotation)
    return []


def _models_in(annotation: object) -> list[type[Frozen]]:
    if isinstance(annotation, type) and issubclass(annotation, Frozen):
        return [annotation]
    return [model for inner in getattr(annotation, "__args__", ()) for model in _models_in(inner)]
