"""Puts a finished folder in the place of another, so that nobody ever sees half a site."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


@contextmanager
def replaced(target: Path) -> Iterator[Path]:
    """Give an empty folder to fill; when that went well, it takes the target's place.

    If filling it fails, the target stays as it was and the half-filled folder is removed.
    """
    fresh, old = target.with_name(f".{target.name}.new"), target.with_name(f".{target.name}.old")
    if old.exists() and not target.exists():  # a run was cut off between its two renames
        old.rename(target)
    for left_behind in (fresh, old):  # of a run that was cut off
        shutil.rmtree(left_behind, ignore_errors=True)
    fresh.mkdir(parents=True)
    try:
        yield fresh
    except BaseException:
        shutil.rmtree(fresh, ignore_errors=True)
        raise
    if target.exists():
        target.rename(old)
    fresh.rename(target)
    shutil.rmtree(old, ignore_errors=True)
