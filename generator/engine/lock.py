"""One build at a time: two would take each other's folders away."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from generator.problems import LessonError, Place, Problem

LOCK = ".cache/lock"
"""Below the root; an empty file, held while a build is under way."""


@contextmanager
def alone(root: Path) -> Iterator[int]:
    """Hold the lock of a site; gives its file, which a forked process must close.

    The system gives a lock up when its holder ends, in whatever way: none is ever left behind.

    Raises:
        LessonError: another build holds it.
    """
    file = root / LOCK
    file.parent.mkdir(parents=True, exist_ok=True)
    held = os.open(file, os.O_RDWR | os.O_CREAT, 0o644)
    try:
        if not is_ours(held):
            what, hint = "another build is under way", "wait until it is done, then say it again"
            raise LessonError([Problem(Place("site"), what, hint)])
        yield held
    finally:
        os.close(held)


if sys.platform == "win32":
    import msvcrt

    def is_ours(file: int) -> bool:
        """Whether the first byte of the file, written or not, is ours now."""
        try:
            msvcrt.locking(file, msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True

else:
    import fcntl

    def is_ours(file: int) -> bool:
        """Whether the file is ours now."""
        try:
            fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            return False
        return True
