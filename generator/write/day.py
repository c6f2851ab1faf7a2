"""The day a site last changed: that of its last commit, so that the same files give the same bytes."""

from __future__ import annotations

import os
import shutil
import subprocess
from datetime import UTC, datetime
from pathlib import Path

from generator.problems import LessonError, Place, Problem

_TOLD = "SOURCE_DATE_EPOCH"
"""Seconds since 1970, by reproducible-builds.org: whoever builds says which time it is."""


def day_of(root: Path) -> str:
    """``2026-11-25``, in UTC; nothing where neither git nor the environment knows.

    Raises:
        LessonError: the environment says something that is no time.
    """
    told = os.environ.get(_TOLD, "")
    seconds = told or _last_commit(root)
    if not seconds:
        return ""
    try:
        return datetime.fromtimestamp(int(seconds), UTC).strftime("%Y-%m-%d")
    except (ValueError, OverflowError, OSError):
        what = f"the variable {_TOLD} is `{seconds[:40]}`, which is no time"
        hint = "set it to seconds since 1970, or to nothing"
        raise LessonError([Problem(Place("site"), what, hint)]) from None


def _last_commit(root: Path) -> str:
    """Seconds since 1970 at the last commit of the site's own repository."""
    git = shutil.which("git") if (root / ".git").exists() else None
    if git is None:
        return ""
    asked = [git, "-C", str(root), "log", "-1", "--no-show-signature", "--format=%ct"]
    return subprocess.run(asked, capture_output=True, text=True, check=False).stdout.strip()  # noqa: S603  # our own words alone
