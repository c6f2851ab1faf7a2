"""The kinds of stop a lesson is made of: every file of this folder but ``base.py`` is one."""

from __future__ import annotations

from collections.abc import Iterator
from functools import reduce
from importlib import import_module
from operator import or_
from pkgutil import iter_modules
from typing import TYPE_CHECKING

from generator.model.stops.base import BaseStop


def _kinds() -> Iterator[tuple[str, type[BaseStop]]]:
    """The class of each file that is of the kind the file is named for."""
    for name in sorted(module.name for module in iter_modules(__path__)):
        for one in vars(import_module(f"{__name__}.{name}")).values():
            if isinstance(one, type) and issubclass(one, BaseStop) and one.kind_name() == name:
                yield name, one


STOP_KINDS: dict[str, type[BaseStop]] = dict(_kinds())
"""Every kind by the key that begins it in a lesson file."""

if TYPE_CHECKING:
    Stop = BaseStop
else:
    Stop = reduce(or_, STOP_KINDS.values())  # what pydantic chooses from by `kind`
