"""Changes ``site_data/foods.yaml`` in place: every comment and every other byte stays.

The file is an educator's own, with her notes in it, so it is edited as text and never written
out anew by a YAML library, which would drop the comments.
"""

from __future__ import annotations

import re
import shutil
import tempfile
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from generator.problems import LessonError, Place, Problem

FOODS = "site_data/foods.yaml"
_BEGUN = """# Foods of this site's own, and what it changes of the program's library.
# An entry that is added is whole. One that changes a food of the program holds only what is other:
#   apple-raw: {names: {en: Apple from the tree}}
foods:
"""
_ENTRY = re.compile(r"( +)([\w-]+):\s*(?:#.*)?$")
_GROUP = re.compile(r"\s+group:\s*[\"']?([^\"'#]+?)[\"']?\s*(?:#.*)?$")


def change_foods(root: Path, change: Callable[[str], str], check: Callable[[Path], object]) -> None:
    """Change the file's text, have the outcome checked, and only then put it in place.

    Args:
        root: folder of the site; the file is begun where it has none.
        change: the old text into the new one; every line ends in a single line feed.
        check: reads a site folder that holds the new file, and raises when it does not like it.

    Raises:
        LessonError: from ``change`` or ``check``; the file stays as it was.
    """
    file = root / FOODS
    raw = file.read_bytes().decode("utf-8") if file.exists() else _BEGUN
    ends = "\r\n" if "\r\n" in raw else "\n"
    text = change(raw.replace("\r\n", "\n")).replace("\n", ends)
    with tempfile.TemporaryDirectory() as folder:
        trial = Path(folder)
        shutil.copytree(root / "site_data", trial / "site_data")
        (trial / FOODS).write_bytes(text.encode())
        check(trial)
    fresh = file.with_name(f".{file.name}.new")
    try:
        fresh.write_bytes(text.encode())
        if file.exists():
            shutil.copymode(file, fresh)
        fresh.replace(file)
    finally:
        fresh.unlink(missing_ok=True)


def with_entry(text: str, id_: str, group: str, lines: Sequence[str]) -> str:
    """The text with an entry added: among its group, in the order of ids.

    Raises:
        LessonError: the file does not hold one entry below the other.
    """
    before = text.splitlines()
    entries = list(_entries(before))
    if not entries and "foods:" in (line.split("#")[0].rstrip() for line in before):
        return "\n".join([*before, *(f"  {line}" for line in (f"# {group}", *lines)), ""])
    if not entries:
        hint = "write `foods:` on a line of its own, and each entry below it, two spaces in"
        raise LessonError([Problem(Place(FOODS), "no entry can be found in this file", hint)])
    indent = entries[0].indent
    new = [indent + line for line in lines]
    fellows = [entry for entry in entries if entry.group == group]
    earlier = [entry for entry in fellows if entry.id < id_]
    if earlier:
        at = max(entry.end for entry in earlier)
    elif fellows:
        at = fellows[0].start
    else:
        at, new = entries[-1].end, [f"{indent}# {group}", *new]
    after = [*before[:at], *new, *before[at:]]
    return "\n".join(after) + ("\n" if text.endswith("\n") or at == len(before) else "")


@dataclass(frozen=True, slots=True)
class _Entry:
    """Where one entry stands among the lines, counted from 0."""

    id: str
    group: str
    indent: str
    start: int
    end: int
    """The line after its last one."""


def _entries(lines: list[str]) -> Iterator[_Entry]:
    """The entries below ``foods:``, up to the next key at the margin."""
    top = next((number for number, line in enumerate(lines) if line.startswith("foods:")), None)
    if top is None:
        return
    starts: list[tuple[int, str, str]] = []
    last = len(lines)
    for number, line in enumerate(lines[top + 1 :], top + 1):
        if line[:1] not in {"", " ", "#"}:
            last = number
            break
        found = _ENTRY.match(line)
        if found and (not starts or found[1] == starts[0][2]):
            starts.append((number, found[2], found[1]))
    limits = [*(start for start, _, _ in starts[1:]), last]
    for (start, id_, indent), limit in zip(starts, limits, strict=False):
        end = _end(lines, start, limit, len(indent))
        group = next((m[1] for line in lines[start:end] if (m := _GROUP.match(line))), "")
        yield _Entry(id_, group, indent, start, end)


def _end(lines: list[str], start: int, limit: int, indent: int) -> int:
    """The line after an entry; a comment that is no deeper than its id belongs to what follows."""
    while limit > start + 1 and not _deeper(lines[limit - 1], indent):
        limit -= 1
    return limit


def _deeper(line: str, indent: int) -> bool:
    return bool(line.strip()) and len(line) - len(line.lstrip()) > indent
