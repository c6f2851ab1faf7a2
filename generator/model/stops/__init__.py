"""The kinds of stop a lesson is made of: every file of this folder but ``base.py`` is one."""

from __future__ import annotations

from collections.abc import Iterator
from functools import reduce
from importlib import import_module
from operator import or_
from pkgutil import iter_modules
from typing import TYPE_CHECKING

from generator.model.stops.base import BaseStop


def _classes() -> Iterator[type[BaseStop]]:
    for name in sorted(module.name for module in iter_modules(__path__) if module.name != "base"):
        module = import_module(f"{__name__}.{name}")
        for one in vars(module).values():
            if (
                isinstance(one, type)
                and issubclass(one, BaseStop)
                and one.__module__ == module.__name__
            ):
                yield one


STOP_KINDS: dict[str, type[BaseStop]] = {one.kind_name(): one for one in _classes()}
"""Every kind by the key that begins it in a lesson file."""

if TYPE_CHECKING:
    Stop = BaseStop
else:
    Stop = reduce(or_, STOP_KINDS.values())  # what pydantic chooses from by `kind`
