"""Where every number of one lesson comes from, for whoever asks in the terminal."""

from __future__ import annotations

from pathlib import Path

from generator.author.trace_text import trace_json, trace_lines
from generator.steps.work import work


def trace_text(root: Path, lesson: str, *, as_json: bool) -> str:
    """Where every number of a lesson comes from, to read or as JSON.

    Raises:
        LessonError: as ``work``.
    """
    figures = work(root, lesson).results[0].figures
    return trace_json(figures) if as_json else "\n".join(trace_lines(figures))
