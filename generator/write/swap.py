"""Puts a finished folder in the place of another, so that nobody ever sees half a site."""

from __future__ import annotations

import os
import shutil
import stat
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from generator.problems import LessonError, Place, Problem
from generator.write.exchange import exchange

GIT = ".git"
"""What makes a site's folder a branch of its own; it belongs to git and stays."""


@contextmanager
def replaced(target: Path) -> Iterator[Path]:
    """Give an empty folder to fill; when that went well, it takes the target's place.

    If filling it fails, the target stays as it was and the half-filled folder is removed. Only
    one run at a time may replace a target: whoever calls sees to that.

    Raises:
        LessonError: the target is a link, and what it leads to would be cut off without a word.
    """
    if target.is_symlink():
        raise LessonError([_leads_elsewhere(target)])
    clear_left_behind(target)
    fresh = target.with_name(f".{target.name}.{os.getpid()}.new")
    fresh.mkdir(parents=True)
    try:
        yield fresh
        _put_in_place(fresh, target)
    finally:
        remove(fresh)


def clear_left_behind(target: Path) -> None:
    """Remove what a run that was cut off left beside a target, and give back what it had taken."""
    left = sorted(target.parent.glob(f".{target.name}.*"))
    if not target.exists():  # cut off between two renames
        for folder in left:
            if folder.name.endswith(".old"):
                folder.rename(target)
    for folder in target.parent.glob(f".{target.name}.*"):
        _keep_git(folder, target)
        remove(folder)


def _put_in_place(fresh: Path, target: Path) -> None:
    """The fresh folder under the target's name; what stood there before is gone."""
    if not target.is_dir():
        target.unlink(missing_ok=True)
        fresh.rename(target)
        return
    old = fresh
    if not exchange(fresh, target):
        old = fresh.with_suffix(".old")
        target.rename(old)
        fresh.rename(target)
    _keep_git(old, target)
    remove(old)


def _keep_git(old: Path, target: Path) -> None:
    """Carry over what binds a folder to git, so that it stays the branch it was."""
    if os.path.lexists(old / GIT) and target.is_dir() and not os.path.lexists(target / GIT):
        (old / GIT).rename(target / GIT)


def remove(folder: Path) -> None:
    """Remove a folder and all in it, also what was made read-only; nothing where there is none.

    Raises:
        OSError: something of it cannot be removed.
    """
    if not folder.is_dir():
        return
    try:
        shutil.rmtree(folder)
    except PermissionError:
        _open_up(folder)
        shutil.rmtree(folder)


def _open_up(folder: Path) -> None:
    """Give ourselves leave to change a folder and all in it; a closed one keeps what is in it."""
    for place, _, names in os.walk(folder):  # a folder is opened before it is looked into
        for file in (Path(place), *(Path(place, name) for name in names)):
            if not file.is_symlink():
                file.chmod(file.stat().st_mode | stat.S_IRWXU)


def _leads_elsewhere(target: Path) -> Problem:
    what = f"`{target.name}` is a link to {target.readlink()}, and building would cut it off"
    return Problem(Place(target.name), what, "remove the link, or build and copy the site there")
