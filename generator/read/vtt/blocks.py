"""Lines into blocks: what stands together between two blank lines."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from generator.read.vtt.lines import Line

Block = tuple[Line, ...]
"""At least one line, none of them blank."""

ARROW = re.compile(r"(?<=[\d.,])\s*(?:-+\s?>|[–—]+>|→|=+>)\s*(?=\d)")
"""An arrow between two times, also a wrong one."""


def blocks(lines: Sequence[Line]) -> Iterator[Block]:
    """The blocks in order. A line of times that follows words begins a block of its own.

    In such a block the blank line is missing; ``Cues.take`` sees it by the number of the line above.
    """
    block: list[Line] = []
    for line in (*lines, None):
        if line is not None and line.text:
            if ARROW.search(line.text) and (start := _begins(block)) is not None:
                yield tuple(block[:start])
                block = block[start:]
            block.append(line)
        elif block:
            yield tuple(block)
            block = []


def _begins(block: Sequence[Line]) -> int | None:
    """Where in a block a cue begins whose times come next; nothing where it is all one cue."""
    timed = any(ARROW.search(line.text) for line in block)
    if not timed and len(block) < 2:
        return None
    if block[0].text.split()[:1] in (["NOTE"], ["STYLE"]):
        return None  # the arrow is no time there, and told as such
    named = len(block) > 1 and not ARROW.search(block[-2].text) and block[-1].text.isdecimal()
    return len(block) - 1 if named else len(block)
