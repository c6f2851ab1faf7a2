"""What each key of our files is for, as it stands below the key in the model's own source.

Only the reference page and the schema want it, so it is looked for here and not whenever the
program starts.
"""

from __future__ import annotations

import ast
import inspect
import textwrap
from collections.abc import Iterator
from functools import cache
from typing import get_args

from generator.model.base import Frozen


@cache
def describe_fields() -> None:
    """Give every field of every model its description; once is enough."""
    models = list(_below(Frozen))
    for model in models:
        for one in reversed(model.__mro__):
            if one is not Frozen and issubclass(one, Frozen):
                for name, text in _texts(one).items():
                    if name in model.model_fields:  # and nothing that a kind says of itself
                        model.model_fields[name].description = text
    rebuilt: set[type[Frozen]] = set()
    for model in models:
        _rebuild(model, rebuilt)


def _rebuild(model: type[Frozen], rebuilt: set[type[Frozen]]) -> None:
    """Make a model anew after those it holds, of each of which it keeps what it was when it was made."""
    if model in rebuilt:
        return
    rebuilt.add(model)
    for field in model.model_fields.values():
        for held in held_models(field.annotation):
            _rebuild(held, rebuilt)
    model.model_rebuild(force=True)


def held_models(annotation: object) -> Iterator[type[Frozen]]:
    """The models in a type: ``Person``, ``tuple[Item, Item]``."""
    if isinstance(annotation, type) and issubclass(annotation, Frozen):
        yield annotation
    for inner in get_args(annotation):
        yield from held_models(inner)


def _below(model: type[Frozen]) -> Iterator[type[Frozen]]:
    for one in model.__subclasses__():
        yield one
        yield from _below(one)


def _texts(model: type[Frozen]) -> dict[str, str]:
    """The text that follows a field's declaration in its class, by the field's name."""
    tree = ast.parse(textwrap.dedent(inspect.getsource(model))).body[0]
    assert isinstance(tree, ast.ClassDef)  # noqa: S101  # that is what the source of a class is
    return {
        field.target.id: inspect.cleandoc(text.value.value)
        for field, text in zip(tree.body, tree.body[1:], strict=False)
        if isinstance(field, ast.AnnAssign)
        and isinstance(field.target, ast.Name)
        and isinstance(text, ast.Expr)
        and isinstance(text.value, ast.Constant)
        and isinstance(text.value.value, str)
    }
