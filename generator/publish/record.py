"""A publication written into the record: whole or not at all, and never over what stands there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from pathlib import Path

from generator.model.published import (
    SITE_RECORD,
    LessonState,
    Publication,
    Published,
    lesson_record,
)
from generator.present.published_lines import lesson_lines, publication_line
from generator.read.published import read_published
from generator.write.appended import append_lines


def append_publication(
    root: Path,
    publication: Publication,
    states: Mapping[str, Mapping[str, LessonState]],
) -> tuple[Path, ...]:
    """Write down what goes out.

    Args:
        root: folder of the site.
        publication: this one; its time is taken for every state.
        states: by lesson and language, all that goes out; what went out before and is not here is gone.

    Returns:
        The files that were added to.

    Raises:
        LessonError: the record as it is cannot be read.
        OSError: it cannot be written; then every file is as it was.
    """
    past = read_published(root)
    lines = dict(_lines(past, publication, states))
    return append_lines(root, lines)


def _lines(
    past: Published, publication: Publication, states: Mapping[str, Mapping[str, LessonState]]
) -> Iterator[tuple[str, list[str]]]:
    """By file, what is added to it; the site's own comes last, for with it the publication is there."""
    for lesson in sorted({*past.lessons, *states}):
        held, now = past.lessons.get(lesson, ()), states.get(lesson, {}).values()
        if lines := list(lesson_lines(held, now, publication.at)):
            yield lesson_record(lesson), lines
    yield SITE_RECORD, [publication_line(publication)]
