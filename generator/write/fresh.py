"""Whether a site is still what its files would make, told by looking at the files from outside.

Nothing of ours is imported here: finding that nothing changed must not take as long as the
program takes to load.
"""

from __future__ import annotations

import hashlib
import os
import sys
from collections.abc import Iterator
from pathlib import Path

_SOURCES = ("lessons", "site_data", "theme", "mkdocs.yml")
_PROGRAM = Path(__file__).parents[1]
_MARK = Path(".cache/built.txt")


def is_fresh(root: Path, site: Path) -> bool:
    """Whether nothing changed since the site was built, in the lessons or in the program."""
    mark = root / _MARK
    try:
        return (site / "index.html").is_file() and mark.read_text("utf-8") == fingerprint(root)
    except OSError:
        return False


def mark_fresh(root: Path, before: str) -> None:
    """Remember what the site was built from: the fingerprint taken before the build began."""
    mark = root / _MARK
    mark.parent.mkdir(exist_ok=True)
    mark.write_text(before, "utf-8")


def fingerprint(root: Path) -> str:
    """One mark of every file the site is made from: its name, its size and when it was changed."""
    digest = hashlib.sha256(f"{sys.version}{os.environ.get('SOURCE_DATE_EPOCH')}".encode())
    for place in (*(root / name for name in _SOURCES), _PROGRAM):
        for line in sorted(_lines(str(place))):
            digest.update(line.encode("utf-8", "surrogateescape"))
    return digest.hexdigest()


def _lines(place: str) -> Iterator[str]:
    if not Path(place).is_dir():
        yield _line(place, Path(place).stat())
        return
    with os.scandir(place) as entries:
        for entry in entries:
            if entry.name == "__pycache__":
                continue
            if entry.is_dir():
                yield from _lines(entry.path)
            elif entry.is_file():  # an editor's lock may be a link that leads nowhere
                yield _line(entry.path, entry.stat())


def _line(path: str, stat: os.stat_result) -> str:
    return f"{path} {stat.st_size} {stat.st_mtime_ns}\n"
