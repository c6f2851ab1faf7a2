"""What a model refuses, said in plain words at the place it was written."""

from __future__ import annotations

from difflib import get_close_matches
from typing import TypeVar

from pydantic import ValidationError
from pydantic_core import ErrorDetails, to_json

from generator.model.base import Frozen
from generator.model.places import Path, Places
from generator.problems import Problem
from generator.read.model_keys import choices, is_written, known_keys, needed_keys
from generator.read.source import Data

Model = TypeVar("Model", bound=Frozen)


def validate(
    model: type[Model],
    data: Data,
    places: Places,
    base: Path = (),
    also: tuple[str, ...] = (),
) -> Model | list[Problem]:
    """Make a model of data that stands at ``base`` in its file, or say all that is wrong with it.

    Args:
        model: what to make.
        data: as read from the file.
        places: where every part of the file stands.
        base: keys down to the data.
        also: keys that belong there as well and were taken out before.
    """
    try:
        # JSON mode: a list may become a tuple and a word an enum member, and nothing else is bent.
        return model.model_validate_json(to_json(data))
    except ValidationError as error:
        errors = error.errors(include_url=False)
        details = [one for one in errors if not (_echo(one) or _follows(one, errors))]
        misspelled = {
            (*detail["loc"][:-1], _meant(model, detail, also))
            for detail in details
            if detail["type"] == "extra_forbidden"
        }
        return [
            _problem(model, detail, places, base, also)
            for detail in details
            if detail["type"] != "missing" or detail["loc"] not in misspelled
        ]


def did_you_mean(word: str, known: list[str]) -> str:
    """A hint naming the nearest known word, or the first few when none is near."""
    near = get_close_matches(word.lower(), known, n=1, cutoff=0.6)
    if near:
        return f"did you mean `{near[0]}`?"
    listed = ", ".join(f"`{name}`" for name in sorted(known)[:8])
    return f"it can be {listed}" + (" …" if len(known) > 8 else "")


def _meant(model: type[Frozen], detail: ErrorDetails, also: tuple[str, ...]) -> str:
    """The key an unknown key was meant for: that one is then misspelled, and not missing as well."""
    known = [*known_keys(model, detail["loc"][:-1]), *also]
    near = get_close_matches(str(detail["loc"][-1]).lower(), known, n=1, cutoff=0.6)
    return near[0] if near else ""


def _echo(detail: ErrorDetails) -> bool:
    """Whether the error repeats another: where a value or none is allowed, each of the two is complained of."""
    return (
        detail["type"] == "literal_error"
        and len(detail["loc"]) > 1
        and str(detail["loc"][-1]).startswith("literal")
    )


def _follows(detail: ErrorDetails, errors: list[ErrorDetails]) -> bool:
    """Whether a list is too short only because an entry of it is wrong, which is told itself."""
    loc = detail["loc"]
    return detail["type"] == "too_short" and any(
        other is not detail and other["loc"][: len(loc)] == loc for other in errors
    )


def _problem(
    model: type[Frozen], detail: ErrorDetails, places: Places, base: Path, also: tuple[str, ...]
) -> Problem:
    *around, last = detail["loc"] or ("",)
    inside = base + tuple(part for part in around if is_written(part))
    kind, context, given = detail["type"], detail.get("ctx", {}), detail["input"]
    if kind == "extra_forbidden":
        known = [*known_keys(model, tuple(around)), *(() if inside else also)]
        what = f"`{last}` is not a key that belongs here"
        if last in _GONE and last not in known:
            return Problem(places.key(*inside, last), what, _GONE[str(last)])
        return Problem(places.key(*inside, last), what, did_you_mean(str(last), known))
    if kind == "missing" and isinstance(last, str):
        hint = f"add `{last}:` {_inside(inside)}{_one_of(choices(model, detail['loc']))}"
        return Problem(places.at(*inside), f"`{last}:` is missing", hint)
    if kind == "missing":  # an entry of a list with a fixed number of them
        what, hint = "has too few entries", "it needs one more"
        return Problem(places.at(*inside), f"{_name(inside)} {what}", _hint(inside, hint))
    path = (*inside, last) if detail["loc"] and is_written(last) else inside
    place, name = places.at(*path), _name(path)
    if kind == "value_error":
        what, _, hint = str(context["error"]).partition(": ")
        return Problem(place, f"{name} {what}", hint)
    if given is None:
        return Problem(place, f"{name} is empty", _hint(path, "write it after the colon"))
    if kind == "string_too_long":  # its own way out, not that of the key
        return Problem(
            place, f"{name} {_plain(kind, context, given)[0]}", _plain(kind, context, given)[1]
        )
    if kind == "too_long" and path[-1] not in {"foods", "sides"}:  # those take exactly two
        most = context["max_length"]
        what = f"{name} has {context['actual_length']} entries, and at most {most} are taken"
        return Problem(places.at(*path, most), what, "take some out, or make two of it")
    if kind in _OF_KEYS and (needed := needed_keys(model, detail["loc"])):
        what = f"{name} must be made of keys and values, not {_shown(given)}"
        hint = f"write {needed} below it, each with its value"
        return Problem(place, what, _hint(path, hint))
    if kind in {"enum", "literal_error"}:
        known = str(context["expected"]).replace(" or ", ", ").split(", ")
        hint = did_you_mean(str(given), [part.strip("'") for part in known])
        return Problem(place, f"{name} cannot be {_shown(given)}", hint)
    if kind == "string_pattern_mismatch" and "languages" in path:
        return Problem(place, f"{_shown(given)} is no language tag", _tag_hint(str(given)))
    what, hint = _plain(kind, context, given)
    return Problem(place, f"{name} {what}", _hint(path, hint))


_GONE = {
    "how_often": "take it out: no word says how often any more; what each portion brings is worked out "
    "and stands on its page and in the notes, and what you want to say of a food goes under `reveal:`"
}
"""Keys of earlier lesson files, each with what to write instead."""


def _tag_hint(word: str) -> str:
    from generator.read.language_tags import tag_hint  # noqa: PLC0415  # it reads what this explains

    return tag_hint(word)


def _one_of(known: list[str]) -> str:
    """The words a key takes, where they are few: ``: `man` or `woman```."""
    *most, last = [f"`{word}`" for word in known] or [""]
    return f": {', '.join(most)} or {last}" if most else ""


def _hint(path: Path, hint: str) -> str:
    """The way out for this key where it has one of its own, or the general one."""
    key = next((part for part in reversed(path) if isinstance(part, str)), "")
    return _HINTS.get(key, hint)


_TWO_FOODS = (
    "a row holds two foods, one for each side: - [{food: …, amount: …}, {food: …, amount: …}]"
)
_HINTS = {
    "rows": _TWO_FOODS,
    "foods": _TWO_FOODS,
    "sides": "name two sides: sides: [Home lunch, Kiosk lunch]",
    "answer": "an answer is not typed: name a number as `trace` prints it, as in half lunch.total.gap",
    "amount": "write a number and what is counted, such as `1 cup` or `150 g`",
    "say": "write `say: |` and the words on the lines below it, indented by two more spaces",
    "read_on": "write year, month and day, such as 2026-03-14",
    "address": "write the whole address, ending in a slash, or leave it empty",
    "url": "write the whole address, beginning with https://",
    "elsewhere": "write the whole address, beginning with https://",
    "languages": "write language tags such as en or es",
    "publish": "write {folder: ../www} or {server: user@host:/path}, or leave it out to publish by git",
    "server": "write it as user@host:/path, in letters, digits and the signs _ . - / ~",
}


def _shown(given: object) -> str:
    """What was written, cut where it is long."""
    if isinstance(given, bool):
        return f"`{str(given).lower()}`"
    if isinstance(given, dict) and given:
        return f"`{str(next(iter(given)))[:60]}: …`"
    if isinstance(given, list):
        return "a list"
    text = str(given) if isinstance(given, str | int | float) else ""
    return f"`{text[:60]}{'…' if len(text) > 60 else ''}`" if text else "this"


def _plain(kind: str, context: dict[str, object], given: object) -> tuple[str, str]:
    """Sentence and way out for the errors that need no more than their own numbers."""
    shown = _shown(given)
    match kind:
        case "string_type":
            return f"must be words, not {shown}", "put it in quotes"
        case "string_too_short":
            return "is empty", "write the text after the colon"
        case "string_pattern_mismatch":
            hint = "use small letters, digits and single hyphens, such as `river-lunch`"
            return f"cannot be {shown}", hint
        case "int_type" | "int_parsing" | "int_from_float" | "int_parsing_size":
            return f"must be a whole number, not {shown}", "write digits only, such as 15"
        case "decimal_type" | "decimal_parsing" | "finite_number":
            return f"must be a number, not {shown}", "write it in digits, with a point for decimals"
        case "too_long":
            return "has too many entries", f"it takes at most {context['max_length']}"
        case "tuple_type" | "list_type":
            hint = (
                "write it in brackets, such as [one, two], or each entry on its own line after `- `"
            )
            return "must be a list", hint
        case "model_type" | "dict_type" | "mapping_type":
            return "must be made of keys and values", "write `key: value` pairs below it"
        case "bool_type" | "bool_parsing":
            return f"must be true or false, not {shown}", "write true or false"
        case _:
            return _beyond(kind, context, shown)


def _beyond(kind: str, context: dict[str, object], shown: str) -> tuple[str, str]:
    """The same for what is of the right kind and too much or too little."""
    match kind:
        case "string_too_long":
            return "is too long", f"use at most {context['max_length']} characters"
        case "decimal_max_places":
            places = context["decimal_places"]
            return f"is {shown}, which is finer than can be shown", f"round it to {places} decimal"
        case "greater_than":
            return f"is {shown}, which is too small", f"it must be more than {context['gt']}"
        case "greater_than_equal":
            return f"is {shown}, which is too small", f"it must be at least {context['ge']}"
        case "less_than" | "less_than_equal":
            limit = context.get("lt", context.get("le"))
            return f"is {shown}, which is too large", f"it must be at most {limit}"
        case "too_short":
            return "has too few entries", f"it needs at least {context['min_length']}"
        case _:
            return f"cannot be {shown}", "look at the lesson file reference"


def _name(path: Path) -> str:
    """How a value is called in a sentence: its key, or its number in the list of its key."""
    keys = [part for part in path if isinstance(part, str)]
    if not keys:
        return "this"
    last = path[-1]
    if keys[-2:] == ["rows", "foods"] and isinstance(last, int) and isinstance(path[-3], int):
        return f"food {last + 1} of row {path[-3] + 1}"
    if keys[-2:] == ["rows", "foods"] and isinstance(path[-2], int):
        return f"row {path[-2] + 1}"
    return f"`{keys[-1]}`" if isinstance(last, str) else f"entry {last + 1} of `{keys[-1]}`"


def _inside(path: Path) -> str:
    return f"inside {_name(path)}" if path else "at the top of the file"


_OF_KEYS = {"model_type", "dict_type", "mapping_type"}
