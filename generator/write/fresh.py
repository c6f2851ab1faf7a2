"""Whether a site is still what its files would make, told by looking at the files from outside.

Next to nothing is imported here: finding that nothing changed must not take as
long as the program takes to load. So paths are plain texts, a folder's ends in a slash, and each
has one number, its mark, that is another one once the file is.
"""

from __future__ import annotations

import os
import sys
import time
from array import array
from collections.abc import Iterable, Iterator, Mapping

from generator import carried
from generator.engine.installed import installed

Marks = dict[str, int]
"""The mark of every file and folder, by its path."""

TRUSTS_TIMES = os.name == "posix"
"""Whether the system tells when a file was last changed in a way that nobody can set back."""
_PROGRAM = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
_SOURCES = ("lessons", "site_data", "theme", "requirements.lock", "mkdocs.yml")
_RECORD = ".cache/built"
_TICK = 0.02
"""Seconds: a file changed twice within one tick of the system's clock may look the same."""


def is_fresh(root: str) -> bool:
    """Whether nothing changed since the site was built: no source, no page, nothing of the program."""
    try:
        surroundings, paths, marks, _ = _read(root)
        return surroundings == around(root) and _as_recorded(paths, marks)
    except (OSError, ValueError):
        return False


def recorded(root: str) -> tuple[Marks, str]:
    """What the last build marked, and what it noted about it; nothing where that cannot be read."""
    try:
        _, paths, marks, note = _read(root)
        return dict(zip(paths, marks, strict=True)), note
    except (OSError, ValueError):
        return {}, ""


def sources(root: str) -> Marks:
    """Everything that a site is made from, as it is now; a change made from now on will show."""
    while True:
        began = time.time()
        found = list(below(_places(root)))
        marks = {path: mark(path) for path in found}
        if not TRUSTS_TIMES or began - max(os.stat(path).st_ctime for path in found) > _TICK:
            return marks
        time.sleep(_TICK)


def mark_fresh(root: str, before: Mapping[str, int], note: str = "") -> None:
    """Remember what the site was built from, as it was before the build, and what it holds now.

    Args:
        root: folder of the site.
        before: what ``sources`` gave before the build began.
        note: what the next build wants to know of this one.
    """
    now = {path: mark(path) for path in below([os.path.join(os.path.abspath(root), "site")])}
    listed = "\0".join([*before, *now]).encode("utf-8", "surrogateescape")
    marks = array("q", [*before.values(), *now.values()]).tobytes()
    record = os.path.join(root, _RECORD)
    os.makedirs(os.path.dirname(record), exist_ok=True)
    parts = (around(root), listed, marks, note.encode())
    try:
        with open(f"{record}.new", "wb") as file:
            file.writelines(b"%d\n%b" % (len(part), part) for part in parts)
        os.replace(f"{record}.new", record)
    except BaseException:  # whoever is stopped meanwhile leaves nothing half written
        if os.path.exists(f"{record}.new"):
            os.unlink(f"{record}.new")
        raise


def _read(root: str) -> tuple[bytes, list[str], array[int], str]:
    """The four parts of the record."""
    with open(os.path.join(root, _RECORD), "rb") as file:
        surroundings, listed, marks, note = (file.read(int(file.readline())) for _ in range(4))
    paths = listed.decode("utf-8", "surrogateescape").split("\0")
    return surroundings, paths, array("q", marks), note.decode()


def below(places: Iterable[str]) -> Iterator[str]:
    """The files and folders that are there, and all in them; what a link leads to is not walked."""
    for place in places:
        if os.path.isdir(place):
            yield f"{place}/"
            yield from _in(place)
        elif os.path.isfile(place):
            yield place


def mark(path: str) -> int:
    """A number that is another one once the file has changed, whatever was done to its times."""
    if TRUSTS_TIMES:
        stat = os.stat(path)
        return hash((stat.st_size, stat.st_mtime_ns, stat.st_ctime_ns, stat.st_ino))
    from hashlib import blake2b  # noqa: PLC0415  # takes its time to load

    if path.endswith("/"):
        held = "\0".join(_names(path)).encode("utf-8", "surrogateescape")
    else:
        with open(path, "rb") as file:
            held = file.read()
    return int.from_bytes(blake2b(held, digest_size=7).digest())


def _in(folder: str) -> Iterator[str]:
    for entry in _entries(folder):
        if entry.is_dir(follow_symlinks=False):
            yield f"{entry.path}/"
            yield from _in(entry.path)
        else:
            yield entry.path


def _entries(folder: str) -> list[os.DirEntry[str]]:
    """What is in a folder, in order: no compiled code of the program's, no link that leads nowhere.

    Some editors put such a link beside a file that is open.
    """
    with os.scandir(folder) as entries:
        found = [
            one for one in entries if one.name != "__pycache__" and (one.is_file() or one.is_dir())
        ]
    return sorted(found, key=lambda one: one.name)


def _names(folder: str) -> list[str]:
    return [entry.name for entry in _entries(folder)]


def _as_recorded(paths: list[str], marks: Iterable[int]) -> bool:
    return all(
        mark(path) == recorded or (path.endswith("/") and _names(path) == _recorded(path, paths))
        for path, recorded in zip(paths, marks, strict=True)
    )


def _recorded(folder: str, paths: list[str]) -> list[str]:
    """The names in a folder when the record was made."""
    beside = (path[len(folder) :].rstrip("/") for path in paths if path.startswith(folder))
    return sorted(name for name in beside if name and os.sep not in name)


def _places(root: str) -> list[str]:
    """What a site is made from: its own files, what mkdocs.yml names, and the program with its lock."""
    here = os.path.abspath(root)
    named = [
        *_SOURCES,
        *(word for word in _config_words(root) if word.strip("./") and word != "site"),
    ]
    own = [os.path.join(here, name) for name in dict.fromkeys(named) if not os.path.isabs(name)]
    own.append(_commits(here))
    return [*own, *carried.beside(here), _PROGRAM, os.path.join(carried.HOME, "requirements.lock")]


def _commits(here: str) -> str:
    """A file that grows with every commit, whose day the list of pages gives.

    The ``.git`` of a worktree is a file that says where that lies (gitrepository-layout of git).
    """
    git = os.path.join(here, ".git")
    if os.path.isfile(git):
        with open(git, encoding="utf-8", errors="replace") as file:
            git = os.path.join(here, file.read().removeprefix("gitdir:").strip())
    return os.path.join(git, "logs", "HEAD")


def around(root: str) -> bytes:
    """All that a site depends on beside files, and which of the files there might be are there."""
    asked = {"SOURCE_DATE_EPOCH", *_config_words(root)}
    variables = [f"{name}={os.environ.get(name)}" for name in asked if name in os.environ]
    there = [place for place in _places(root) if os.path.exists(place)]
    parts = [sys.version, *installed(), *sorted(variables), *there]
    return "\n".join(parts).encode("utf-8", "surrogateescape")


def _config_words(root: str) -> list[str]:
    """Every word of mkdocs.yml: it may name a file, or a variable of the environment."""
    try:
        with open(os.path.join(root, "mkdocs.yml"), encoding="utf-8", errors="replace") as file:
            text = file.read()
    except FileNotFoundError:
        return []
    for sign in "[]{},:\"'":
        text = text.replace(sign, " ")
    return text.split()
