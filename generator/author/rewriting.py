"""What an older program wrote, brought into the shape of today's, with every comment where it was.

A change of a file's shape is one entry of ``REWRITINGS``: the first version that wants the new shape,
the files it is about, and a function that finds what has to be put in other words. It sees the file
taken apart, with the place of everything, and names single edits; all else stays byte for byte.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from generator.problems import Problem
from generator.read.files import read_text
from generator.read.source import Source, read_source
from generator.write.foods_values import Edit, with_values
from generator.write.whole import write_whole

Version = tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Rewriting:
    """One change of a shape."""

    since: str
    """The first version whose files have the new shape."""
    files: str
    """Which files below the site's folder, as ``lessons/*/lesson.yaml``."""
    edits: Callable[[Source], Iterable[Edit]]
    """What has to be other in a file; nothing where it has the new shape."""


REWRITINGS: tuple[Rewriting, ...] = ()
"""All there were, the oldest first. No shape has changed since the first release."""


def version(text: str) -> Version:
    """``1.10.2`` as numbers, so that versions have an order; nothing where it is none."""
    parts = text.split(".")
    return (
        tuple(map(int, parts)) if all(part.isascii() and part.isdecimal() for part in parts) else ()
    )


def carry_over(
    root: Path, since: str, rewritings: Sequence[Rewriting] = REWRITINGS
) -> tuple[str, ...]:
    """Rewrite the files of a site that an older program made; returns their paths below it.

    Args:
        root: folder of the site.
        since: version of the program the files were right for.
        rewritings: all there are, the oldest first.
    """
    wanted = [one for one in rewritings if version(one.since) > version(since)]
    return tuple(dict.fromkeys(path for one in wanted for path in _carried(root, one)))


def _carried(root: Path, rewriting: Rewriting) -> Iterator[str]:
    for file in sorted(root.glob(rewriting.files)):
        path = file.relative_to(root).as_posix()
        text = read_text(root, path)
        if isinstance(text, Problem):
            continue  # told by `check`, which comes next
        source = read_source(path, text)
        edits = [] if source.problems else list(rewriting.edits(source))
        if edits:
            write_whole(file, with_values(text, edits, ()), newline="")
            yield path
