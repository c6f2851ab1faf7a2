"""What files hold, as one word each; a file is read again only when its mark is another one."""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Mapping
from hashlib import blake2b, file_digest
from pathlib import Path

_RECORD = ".cache/contents.json"


class Contents:
    """Checksums of the files that a site is made from."""

    def __init__(self, root: Path, marks: Mapping[str, int]) -> None:
        """Begin with what is remembered.

        Args:
            root: folder of the site.
            marks: of every file and folder there is, by path; another number means another file.
        """
        self.marks = marks
        self._record = root / _RECORD
        self._known = _remembered(self._record)
        self._asked: dict[str, tuple[int, str]] = {}

    def __getitem__(self, path: str) -> str:
        """The checksum of what a file holds; a folder has none, what is in it has.

        Raises:
            OSError: the file cannot be read.
        """
        return self.word(path, self.marks[path], lambda: _checksum(path))

    def word(self, name: str, mark: int, find: Callable[[], str]) -> str:
        """What is remembered under a name with this mark; else what is found now."""
        known = self._asked.get(name) or self._known.get(name)
        if known is None or known[0] != mark:
            known = (mark, find())
        self._asked[name] = known
        return known[1]

    def remember(self) -> None:
        """Write down what was asked for; what nobody asks for any more is forgotten."""
        self._record.parent.mkdir(parents=True, exist_ok=True)
        write_record(self._record, json.dumps(self._asked, ensure_ascii=True))


def write_record(file: Path, text: str) -> None:
    """Write what one build notes for the next, in one step; whoever is stopped leaves nothing half written."""
    growing = file.with_suffix(".new")
    try:
        growing.write_text(text, "utf-8")
        growing.replace(file)
    except BaseException:
        growing.unlink(missing_ok=True)
        raise


def combined(parts: Mapping[str, str]) -> str:
    """One checksum of many, each with its name."""
    text = "".join(f"{name}\0{value}\0" for name, value in sorted(parts.items()))
    return blake2b(text.encode("utf-8", "surrogateescape"), digest_size=16).hexdigest()


def _remembered(record: Path) -> dict[str, tuple[int, str]]:
    """What was written down; nothing where that is damaged, for then all is read again."""
    try:
        return {
            str(path): (int(mark), str(held))
            for path, (mark, held) in json.loads(record.read_bytes()).items()
        }
    except (OSError, ValueError, TypeError, AttributeError):
        return {}


def _checksum(path: str) -> str:
    if os.path.islink(path):  # noqa: PTH114  # as below
        return f"a link to {os.readlink(path)}"  # noqa: PTH115  # as below
    with open(path, "rb") as file:  # noqa: PTH123  # thousands of them, by names that are texts
        return file_digest(file, lambda: blake2b(digest_size=16)).hexdigest()
