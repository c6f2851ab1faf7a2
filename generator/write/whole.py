"""A text file written whole or not at all, whatever the disk says meanwhile."""

from __future__ import annotations

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
    part = file.with_name(
        f".{file.name}.part"
    )  # beside it, so that the swap is one step on any disk
    part.unlink(missing_ok=True)  # never write through a link
    try:
        part.write_text(text, "utf-8", newline=newline)
        part.replace(file)
    finally:
        part.unlink(missing_ok=True)
    return file
