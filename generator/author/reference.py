"""The reference page of the lesson file, written from the models themselves."""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum
from typing import get_args

from generator.author.field_docs import describe_fields, held_models
from generator.model.base import Frozen
from generator.model.lesson import LessonHead, Video
from generator.model.stops import STOP_KINDS
from generator.model.stops.compare import Item, RowEntry

_INTRO = """# The lesson file

This page is written by `python3 generator reference` from the program itself; change the program, not the page.

A lesson is a folder below `lessons/` with a file `lesson.yaml` in it. Its keys stand at the left
edge; what belongs to a key is indented by two more spaces. Times stand in quotes: `"1:10"`.
Each stop begins with `- ` and its kind. `say`, `title` and `id` may stand inside a stop or beside its kind.

A row is a list of two foods: `- [{food: apple-raw, amount: 1 medium}, {food: apple-pie, amount: 1 slice}]`.
With an id of its own it is written `- {id: apples, foods: [{food: …, amount: …}, {food: …, amount: …}]}`.
Stops and rows keep their names when others are moved or taken out; links, what a learner has typed
and what was filmed hang on them. Give an `id` before you change a title or a food that names one.

A text may name a number of the lesson in braces: `{lunch.total.gap}`, or `{total.gap}` inside that stop,
is filled with what the page shows. `{26}` is a number that is meant and none of the lesson's; `{{` is a brace.
"""


def reference_page() -> str:
    """Markdown of the whole page."""
    describe_fields()
    parts = [_INTRO, *_section("At the top", LessonHead), *_section("`video`", Video)]
    for kind, model in STOP_KINDS.items():
        parts += _section(f"`{kind}`: {_sentence(model.__doc__)}", model)
        for key, held in _parts(model):
            parts += _section(f"`{key}` of a `{kind}`: {_sentence(held.__doc__)}", held)
    parts += _section("One row, where it has an id", RowEntry)
    parts += _section("One food of a row", Item)
    return "\n".join(parts)


def _parts(model: type[Frozen]) -> Iterator[tuple[str, type[Frozen]]]:
    """What keys of a stop hold that has keys of its own; rows and their foods have sections of their own."""
    for name, field in model.model_fields.items():
        for held in held_models(field.annotation):
            if held not in {RowEntry, Item}:
                yield field.alias or name, held


def _section(title: str, model: type[Frozen]) -> Iterator[str]:
    yield f"\n## {title}\n"
    yield "| Key | Needed | What it is |"
    yield "| --- | --- | --- |"
    for name, field in model.model_fields.items():
        if name != "kind":
            needed = "yes" if field.is_required() else ""
            what = _cell(field.description) + _choices(field.annotation)
            yield f"| `{field.alias or name}` | {needed} | {what} |"


def _choices(annotation: object) -> str:
    """The words a key takes, where it takes no others."""
    if isinstance(annotation, type) and issubclass(annotation, StrEnum):
        return f" One of {', '.join(f'`{choice.value}`' for choice in annotation)}."
    return "".join(dict.fromkeys(map(_choices, get_args(annotation))))


def _sentence(text: str | None) -> str:
    """The first line of a docstring, beginning small, without its full stop."""
    line = (text or "").strip().splitlines()[0].rstrip(".")
    return line[:1].lower() + line[1:]


def _cell(text: str | None) -> str:
    """A description inside a table: one line, code in single backticks, no bars."""
    return " ".join((text or "").split()).replace("``", "`").replace("|", "\\|")
