"""Packs by key, below ``.cache/``: what was made once is found again, and what nobody wants goes."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from generator.engine.pack import Fact, Pack, read_pack, write_pack
from generator.media.content import Joined

_SPARE = 200
"""Packs kept besides those in use, so that an edit taken back finds what was made before it."""
STATES = "states"
"""Folder below ``.cache/`` for a site as it was at other times, each laid out in a folder of its own."""


def keeps_of(root: Path) -> Path:
    """Where what is made of a site is kept; a state of a site at another time keeps with the site itself."""
    states = root.parent
    return states.parent if states.name == STATES else root / ".cache"


@dataclass(frozen=True, slots=True)
class Store:
    """A folder of packs, each called by its key."""

    folder: Path

    def find(self, key: str) -> Pack | None:
        """What was made under a key; nothing where that is not kept, or damaged."""
        return read_pack(self._file(key))

    def keep(
        self, key: str, facts: dict[str, Fact], outputs: Iterable[tuple[str, bytes | Joined]]
    ) -> Pack:
        """Keep what was made under a key."""
        file = self._file(key)
        file.parent.mkdir(parents=True, exist_ok=True)
        return write_pack(file, facts, outputs)

    def drop(self, key: str) -> None:
        """Forget what was made under a key."""
        self._file(key).unlink(missing_ok=True)

    def take_in(self, file: Path) -> bool:
        """Keep a pack that was made elsewhere; says whether it is whole."""
        if read_pack(file) is None:
            return False
        target = self._file(file.name)
        target.parent.mkdir(parents=True, exist_ok=True)
        growing = target.with_name(f"{target.name}.{os.getpid()}")
        shutil.copyfile(file, growing)
        growing.replace(target)
        return True

    def sweep(self, wanted: Iterable[str], spare: int = _SPARE) -> None:
        """Remove the packs that are not wanted, but for the newest of them."""
        keys = set(wanted)
        orphans = [file for file in self.folder.glob("*/*") if file.name not in keys]
        if len(orphans) > spare:
            orphans.sort(key=lambda file: file.stat().st_mtime_ns, reverse=True)
            for file in orphans[spare:]:
                file.unlink(missing_ok=True)

    def _file(self, key: str) -> Path:
        return self.folder / key[:2] / key
