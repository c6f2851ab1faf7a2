"""A built site put into a folder of this machine: whole or not at all."""

from __future__ import annotations

import errno
import os
import shutil
from pathlib import Path

from generator.publish.ours import MARK, foreign, listing
from generator.publish.refused import NotPublishedError
from generator.write.exchange import exchange
from generator.write.swap import GIT, remove

_ROOM_BESIDE = 10 * 1024 * 1024
"""Bytes that stay free on a disk that is nearly full."""


def place_of(root: Path, said: str) -> Path:
    """The folder that is meant, told from the site's own where it does not begin at the root.

    Raises:
        NotPublishedError: it lies in the site's own folder, or holds that.
    """
    target = Path(os.path.normpath(root.resolve() / Path(said).expanduser()))
    if target.resolve().is_relative_to(root.resolve()) or root.resolve().is_relative_to(
        target.resolve()
    ):
        what = f"`publish: {{folder: {said}}}` leads to {target}, into this site's own folder or around it"
        raise NotPublishedError(what, "name a folder apart from it, such as ../www")
    return target


def refuse_foreign(target: Path) -> None:
    """Stop before a folder is replaced that holds anything but a site of ours.

    Raises:
        NotPublishedError: it is no folder, leads elsewhere, or holds something else.
    """
    if target.is_symlink() or (target.exists() and not target.is_dir()):
        what = f"{target} is a link or a file, and a site would take its place"
        raise NotPublishedError(what, "name a folder in site_data/site.yaml")
    if not target.parent.is_dir():
        what = f"{target.parent} is not there, so {target.name} cannot be made in it"
        raise NotPublishedError(what, "see whether the disk is there, or make that folder first")
    if not target.is_dir():
        return
    mark = target / MARK
    listed = mark.read_text("utf-8") if mark.is_file() else ""
    if other := foreign([one.name for one in target.iterdir()], listed):
        what = f"{target} holds {', '.join(other[:5])}, which is no part of this site and would be gone"
        raise NotPublishedError(what, "take that out, or name another folder")


def put_into(site: Path, target: Path) -> None:
    """Put a built site in the place of the one before; until the last moment that one stands.

    What a run left there that was cut off is cleared up first.

    Raises:
        NotPublishedError: there is no room, or something else is there.
    """
    fresh, old = _beside(target, "new"), _beside(target, "old")
    clear_up(target)
    refuse_foreign(target)
    _refuse_no_room(site, target.parent)
    try:
        _fill(site, fresh, target)
        if not target.is_dir():
            fresh.rename(target)
        elif exchange(fresh, target):
            fresh.rename(old)
        else:
            target.rename(old)
            fresh.rename(target)
    finally:
        clear_up(target)


def _beside(target: Path, word: str) -> Path:
    return target.with_name(f".{target.name}.plumline-{word}")


def clear_up(target: Path) -> None:
    """Remove what a run left beside a target; cut off between two renames, the old site is given back first."""
    fresh, old = _beside(target, "new"), _beside(target, "old")
    if old.is_dir() and not target.exists():
        old.rename(target)
    for left in (fresh, old):
        if (left / GIT).exists() and target.is_dir() and not (target / GIT).exists():
            (left / GIT).rename(target / GIT)
        remove(left)


def _fill(site: Path, fresh: Path, target: Path) -> None:
    try:
        shutil.copytree(site, fresh)
        (fresh / MARK).write_text(listing(site), "utf-8")
        _carry_over(target, fresh)
    except OSError as error:  # of many files at once it says only words
        full = error.errno in {errno.ENOSPC, errno.EDQUOT} or os.strerror(errno.ENOSPC) in str(
            error
        )
        if not full:
            raise
        raise _no_room(target.parent) from None


def _carry_over(target: Path, fresh: Path) -> None:
    """What the host itself keeps there; the folder of git follows by itself."""
    if not target.is_dir():
        return
    for one in target.glob(".*"):
        if one.name in {MARK, GIT} or (fresh / one.name).exists():
            continue
        if one.is_dir() and not one.is_symlink():
            shutil.copytree(one, fresh / one.name, symlinks=True)
        else:
            shutil.copy2(one, fresh / one.name, follow_symlinks=False)


def _refuse_no_room(site: Path, disk: Path) -> None:
    size = sum(file.stat().st_size for file in site.rglob("*") if file.is_file())
    if shutil.disk_usage(disk).free < size + _ROOM_BESIDE:
        raise _no_room(disk)


def _no_room(disk: Path) -> NotPublishedError:
    what = f"the disk of {disk} has no room for a second site beside the one that stands there, which stays as it is"
    return NotPublishedError(what, "make room, then publish again")
