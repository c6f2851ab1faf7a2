"""Where each part of a file stands, so that a problem found later can still point at it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from generator.problems import Place

Path = tuple[str | int, ...]
"""Keys and list indexes from the top of a file down to a part of it."""


@dataclass(frozen=True, slots=True)
class Places:
    """The place of every value in one file."""

    file: str
    """Path of the file, relative to the project's root."""
    values: Mapping[Path, Place] = field(repr=False)
    """By keys and numbers from the top of the file."""
    keys: Mapping[Path, Place] = field(repr=False)
    """The place of each key, by the same path as its value."""
    lines: tuple[str, ...] = field(default=(), repr=False)
    """The file's text, for showing the line with a problem."""
    cut: Mapping[Path, Place] = field(default_factory=dict, repr=False)
    """Where a value without quotes ends at a ``#``, by the value's path."""

    def at(self, *path: str | int) -> Place:
        """The place of a value; of the nearest part around it where it is not written in the file."""
        while path:
            if path in self.values:
                return self.values[path]
            path = path[:-1]
        return self.values.get((), Place(self.file))

    def key(self, *path: str | int) -> Place:
        """The place of a key; of its value where it has none (an entry of a list)."""
        return self.keys.get(path) or self.at(*path)
