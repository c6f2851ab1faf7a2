"""The record while a publication is under way: where that comes to nothing, no line of it stays."""

from __future__ import annotations

import json
import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from generator.model.published import PUBLISHED
from generator.write.whole import write_whole

_UNDER_WAY = ".cache/publishing.json"
"""Below the root while a publication is under way: its moment, and how long each file was before it."""


@contextmanager
def taken_back(root: Path, at: str) -> Iterator[None]:
    """Cut the lines off again that are added meanwhile, where what is tried fails or is cut off.

    Args:
        root: folder of the site.
        at: moment of the publication that adds them.
    """
    sizes = {_name(root, file): file.stat().st_size for file in _files(root)}
    note = root / _UNDER_WAY
    note.parent.mkdir(parents=True, exist_ok=True)
    write_whole(note, json.dumps({"at": at, "sizes": sizes}))
    try:
        yield
    except BaseException:
        _cut_back(root, sizes)
        note.unlink()
        raise
    note.unlink()


def forget_cut_off(root: Path, went_out: frozenset[str]) -> None:
    """Take the lines back that a publication wrote which was cut off before it went out.

    Args:
        root: folder of the site.
        went_out: moments of the publications of which it is known that they did.
    """
    note = root / _UNDER_WAY
    if not note.is_file():
        return
    with suppress(ValueError):  # a disk that lost what was written knows no sizes
        told = json.loads(note.read_text("utf-8"))
        if told["at"] not in went_out:
            _cut_back(root, told["sizes"])
    note.unlink()


def _cut_back(root: Path, sizes: dict[str, int]) -> None:
    for file in _files(root):
        size = sizes.get(_name(root, file))
        if size is None:
            file.unlink()
        elif file.stat().st_size > size:
            os.truncate(file, size)


def _files(root: Path) -> list[Path]:
    return sorted((root / PUBLISHED).rglob("*.jsonl"))


def _name(root: Path, file: Path) -> str:
    return file.relative_to(root).as_posix()
