"""The pages a new site begins with, and the guide, without what is the demo's alone."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

from generator import carried

_PAGES = ("index.md", "care.md", "sources.md", "teachers.md")
_FIRST = "en"
"""Language whose pages stand in ``lessons/`` itself where the program keeps them."""
GUIDE = "lessons/guide"
_OF_DEMO = re.compile(r"\n## Larkmead\n.*?(?=\n## |\Z)|^# [^\n]*Larkmead\n+", re.DOTALL)
"""What the pages say of the demo's invented place: a part of its own, or the title."""
_PICTURES = re.compile(r" ?\[[^\]]*\]\(pictures\.md\)[^.]*\.")
"""What leads to the pictures of the demo, which stay behind."""


def starter_pages(languages: tuple[str, ...]) -> Iterator[tuple[str, bytes]]:
    """Care, sources, a page for teachers and a front page in each language, and the guide.

    Args:
        languages: of the new site, the first its own.
    """
    for language in languages:
        source = _lessons() / ("" if language == _FIRST else language)
        target = "lessons" if language == languages[0] else f"lessons/{language}"
        for name in _PAGES:
            if (source / name).is_file():
                text = (source / name).read_text("utf-8")
                yield f"{target}/{name}", _OF_DEMO.sub("", text).rstrip().encode() + b"\n"
    yield from guide_pages()


def guide_pages() -> Iterator[tuple[str, bytes]]:
    """The guide for educators, shown in the preview only."""
    for file in sorted((_lessons() / "guide").glob("*.md")):
        if file.name != "pictures.md":
            text = _PICTURES.sub("", file.read_text("utf-8"))
            yield f"{GUIDE}/{file.name}", text.encode()


def write_guide(root: Path) -> None:
    """Write the pages of the guide into a site that has one; others in its folder stay."""
    if (root / GUIDE).is_dir():
        for path, text in guide_pages():
            (root / path).write_bytes(text)


def _lessons() -> Path:
    return Path(carried.HOME, "lessons")
