"""Lines added to several files, to all of them or to none."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from generator.write.whole import write_bytes_whole


def append_lines(root: Path, lines: Mapping[str, Sequence[str]]) -> tuple[Path, ...]:
    """Add lines at the end of files, in the order given; returns the files.

    Args:
        root: folder that the paths are below.
        lines: what is added, by path; a file that is not there yet begins with it.

    Raises:
        OSError: one cannot be written; then all are as they were.
    """
    before: dict[Path, bytes | None] = {}
    try:
        for path, added in lines.items():
            file = root / path
            file.parent.mkdir(parents=True, exist_ok=True)
            held = file.read_bytes() if file.exists() else None
            whole = held or b""
            if whole and not whole.endswith(b"\n"):
                whole += b"\n"  # an editor took the last line's end away
            whole += "".join(f"{line}\n" for line in added).encode()
            write_bytes_whole(file, whole)
            before[file] = held
    except BaseException:
        for file, held in before.items():
            _put_back(file, held)
        raise
    return tuple(before)


def _put_back(file: Path, held: bytes | None) -> None:
    if held is None:
        file.unlink(missing_ok=True)
    else:
        write_bytes_whole(file, held)
