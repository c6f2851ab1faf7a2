"""A sentence as long as somebody can say it: what is longer is looked at in parts."""

from __future__ import annotations

from collections.abc import Iterator

LONGEST = 600
"""Signs of a part. What stands around a number or a claim is looked for in its own sentence; without
a bound a text that is one sentence would be looked through once for each of its thousands of numbers."""


def parts(sentence: str) -> Iterator[tuple[int, str]]:
    """Where each part begins in the sentence, and the part; cut after a space where there is one."""
    start = 0
    while len(sentence) - start > LONGEST:
        end = sentence.rfind(" ", start + 1, start + LONGEST) + 1 or start + LONGEST
        yield start, sentence[start:end]
        start = end
    yield start, sentence[start:]
