"""A file written whole or not at all, whatever the disk says meanwhile."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


def write_whole(file: Path, text: str, newline: str | None = None) -> Path:
    """Write a file in the place of what has its name; returns it.

    Args:
        file: in a folder that is there.
        text: all of it.
        newline: what ends its lines; nothing for what the system uses.

    Raises:
        OSError: it cannot be written; the old one is as it was, and nothing is left beside it.
    """
    with _in_its_place(file) as part:
        part.write_text(text, "utf-8", newline=newline)
    return file


def write_bytes_whole(file: Path, data: bytes) -> Path:
    """The same for a file that is no text.

    Raises:
        OSError: as ``write_whole``.
    """
    with _in_its_place(file) as part:
        part.write_bytes(data)
    return file


@contextmanager
def _in_its_place(file: Path) -> Iterator[Path]:
    """A file to write; when that went well, it takes the other's place."""
    part = file.with_name(
        f".{file.name}.part"
    )  # beside it, so that the swap is one step on any disk
    part.unlink(missing_ok=True)  # never write through a link
    try:
        yield part
        part.replace(file)
    finally:
        part.unlink(missing_ok=True)
