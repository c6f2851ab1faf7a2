"""What the machine would not do, in a sentence: a full disk, a closed folder, an address in use."""

from __future__ import annotations

import errno
import os

_WAYS_OUT = {
    errno.ENOSPC: ("the disk is full", "make room, then say it again"),
    errno.EDQUOT: ("your share of the disk is full", "make room, then say it again"),
    errno.EROFS: ("this disk can only be read", "work on a copy on another disk"),
    errno.EACCES: ("this is not permitted", "ask whose it is, or work on a copy of your own"),
    errno.EPERM: ("this is not permitted", "ask whose it is, or work on a copy of your own"),
    errno.ENOENT: ("this is not there", "say it in the folder that holds lessons/"),
    errno.ENOTDIR: ("this should be a folder", "see what was saved under this name"),
    errno.EISDIR: ("this should be a file", "see what was saved under this name"),
    errno.EEXIST: ("something else has this name", "give that another name, or remove it"),
    errno.EBUSY: ("another program uses this", "close that program, then say it again"),
    errno.EADDRINUSE: (
        "another program uses this address",
        "close the other preview, or take another with --address 127.0.0.1:8001",
    ),
    errno.EMFILE: ("too many files are open", "close other programs, then say it again"),
}
"""By number of the error: what it means, and what to do."""


def sentence(error: OSError, root: str) -> str:
    """One line: where, what, and a way out.

    Args:
        error: what the system said.
        root: folder of the site; names are told from there.
    """
    usual = ((error.strerror or str(error)).lower(), "see whether the disk is in order")
    what, hint = _WAYS_OUT.get(error.errno or 0, usual)
    names = [_told(name, root) for name in (error.filename, error.filename2) if name is not None]
    where = f"{' to '.join(names)}: " if names else ""
    return f"{where}{what}: {hint}."


def _told(name: object, root: str) -> str:
    path = os.fsdecode(name) if isinstance(name, str | bytes | os.PathLike) else str(name)
    inside = os.path.abspath(root) + os.sep  # noqa: PTH100  # a name may be text that is no path at all
    return path.removeprefix(inside)
