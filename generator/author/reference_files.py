"""The lesson file's reference page and its JSON Schema, written where the site keeps them."""

from __future__ import annotations

from pathlib import Path

from generator.author.reference import reference_page
from generator.author.schema import lesson_schema
from generator.write.whole import write_whole


def write_reference(root: Path) -> tuple[Path, ...]:
    """Write the lesson file's JSON Schema and its reference page; returns both files."""
    written = {
        root / "site_data/lesson.schema.json": lesson_schema(),
        root / "lessons/guide/lesson-file.md": reference_page(),
    }
    for file, text in written.items():
        file.parent.mkdir(parents=True, exist_ok=True)
        write_whole(file, text)
    return tuple(written)
