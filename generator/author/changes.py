"""What changed from one version of the program to another, out of its own list of changes."""

from __future__ import annotations

import re

from generator.author.rewriting import version

_HEAD = re.compile(r"^## (?P<version>\d+(?:\.\d+)*)\b.*$", re.MULTILINE)


def changes_since(changelog: str, old: str) -> str:
    """The entries of every version after one, as they were written, the newest first.

    Args:
        changelog: of the newer program, Markdown with a heading for each version.
        old: version to begin after.
    """
    heads = list(_HEAD.finditer(changelog))
    ends = [*(head.start() for head in heads[1:]), len(changelog)]
    parts = [
        changelog[head.start() : end].strip()
        for head, end in zip(heads, ends, strict=True)
        if version(head["version"]) > version(old)
    ]
    return "\n\n".join(parts)
