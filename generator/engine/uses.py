"""Which entries of a library something was made with, noticed as they are asked for."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import TypeVar

from generator.engine.contents import combined, write_record

Entry = TypeVar("Entry")
ALL = "*"
"""Asked for by whoever looks through all names."""


class Watched(Mapping[str, Entry]):
    """A mapping that notes the names it is asked for, whether it has them or not."""

    def __init__(self, entries: Mapping[str, Entry], kind: str, asked: set[str]) -> None:
        """Watch some entries.

        Args:
            entries: what is watched.
            kind: stands before each name, such as ``foods``.
            asked: where names are noted: ``foods/apple-raw``.
        """
        self._entries = entries
        self._kind = kind
        self._asked = asked

    def __getitem__(self, name: str) -> Entry:
        self._asked.add(f"{self._kind}/{name}")
        return self._entries[name]

    def __iter__(self) -> Iterator[str]:
        self._asked.add(f"{self._kind}/{ALL}")
        return iter(self._entries)

    def __len__(self) -> int:
        self._asked.add(f"{self._kind}/{ALL}")
        return len(self._entries)


class Uses:
    """What was used by whatever was made, so that its key is known before it is made again."""

    _SPARE = 2000
    """As many are remembered besides those asked for, for edits that are taken back."""

    def __init__(self, file: Path) -> None:
        """Begin with what is remembered; with nothing where that is damaged."""
        self._file = file
        try:
            held = json.loads(file.read_bytes())
            self._known = {str(key): [str(name) for name in names] for key, names in held.items()}
        except (OSError, ValueError, AttributeError, TypeError):
            self._known = {}
        self._asked: dict[str, list[str]] = {}

    def find(self, own: str, around: str) -> list[str] | None:
        """Names of the entries that something used; nothing where that is not known.

        Args:
            own: what it is made of itself, as a checksum.
            around: what stands around it, likewise.
        """
        key = combined({"own": own, "around": around})
        names = self._known.get(key)
        if names is not None:
            self._asked[key] = names
        return names

    def add(self, own: str, around: str, names: Iterable[str]) -> None:
        """Note what something used."""
        key = combined({"own": own, "around": around})
        self._known[key] = self._asked[key] = list(names)

    def remember(self) -> None:
        """Write down what was asked for, and the latest of the rest."""
        rest = [key for key in self._known if key not in self._asked][-self._SPARE :]
        kept = {key: self._known[key] for key in rest} | self._asked
        write_record(self._file, json.dumps(kept))
