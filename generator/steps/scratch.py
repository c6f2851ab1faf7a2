"""A folder below ``.cache/`` for what is needed while a process runs; what a killed one left goes with the next start."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from itertools import count
from pathlib import Path

from generator.engine.lock import is_ours
from generator.write.swap import remove

_ABOVE = ".cache/scratch"
"""Below the root. Each folder has a file beside it, which its process holds locked; the system
gives a lock up when its holder ends, in whatever way."""


@contextmanager
def scratch(root: Path) -> Iterator[Path]:
    """An empty folder of one's own, removed at the end.

    Raises:
        OSError: it cannot be made.
    """
    above = root / _ABOVE
    above.mkdir(parents=True, exist_ok=True)
    for lock in above.glob("*.lock"):
        _clear(lock)
    held, folder = _begun(above)
    try:
        yield folder
    finally:
        remove(folder)
        os.close(held)
        folder.with_suffix(".lock").unlink(missing_ok=True)


def _begun(above: Path) -> tuple[int, Path]:
    """A locked file and the folder beside it."""
    for number in count():
        lock = above / f"{os.getpid()}-{number}.lock"
        held = os.open(lock, os.O_RDWR | os.O_CREAT, 0o644)
        if is_ours(held) and _is_still(held, lock):  # nobody took it for a left one meanwhile
            folder = lock.with_suffix("")
            remove(folder)
            folder.mkdir()
            return held, folder
        os.close(held)
    raise AssertionError  # for there is always a next number


def _clear(lock: Path) -> None:
    """Remove a folder and the file beside it, if no process holds that any more."""
    try:
        held = os.open(lock, os.O_RDWR)
    except FileNotFoundError:  # its process has ended meanwhile
        return
    try:
        if not is_ours(held):
            return
        remove(lock.with_suffix(""))
        if os.name == "posix":  # elsewhere an open file cannot go
            lock.unlink(missing_ok=True)
    finally:
        os.close(held)
    if os.name != "posix":
        lock.unlink(missing_ok=True)


def _is_still(held: int, lock: Path) -> bool:
    try:
        return os.path.samestat(os.fstat(held), lock.stat())
    except FileNotFoundError:
        return False
