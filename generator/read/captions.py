"""The caption files a lesson names, read; what is wrong in them is told with their own places."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from generator.model.captions import DRAFT_NOTE, CaptionFile
from generator.problems import Place, Problem
from generator.read.files import read_text
from generator.read.media import lies_beside
from generator.read.merge_marks import merge_problem
from generator.read.source import Data
from generator.read.vtt import read_vtt

_LARGEST = 500_000
"""Bytes of a caption file; an hour of speech has a fifth of it."""


def read_captions(
    root: Path, folder: Path, video: Data, problems: list[Problem]
) -> dict[str, CaptionFile]:
    """Captions by language. A file that is not there is told elsewhere, beside its name in the lesson.

    Args:
        root: folder of the site.
        folder: the lesson's own.
        video: what the lesson says of its video.
        problems: what is wrong in a file is added here.
    """
    named = video.get("captions") if isinstance(video, dict) else None
    read: dict[str, CaptionFile] = {}
    for language, name in named.items() if isinstance(named, dict) else ():
        if not isinstance(name, str) or not lies_beside(folder, name):
            continue
        path = (folder / name).relative_to(root).as_posix()
        text = read_text(root, path, _LARGEST)
        if isinstance(text, str) and (merged := merge_problem(path, text)):
            text = merged
        captions = text if isinstance(text, Problem) else read_vtt(path, language, text)
        if isinstance(captions, CaptionFile):
            read[language] = replace(captions, draft=_draft(path, str(text)))
        else:
            problems += [captions] if isinstance(captions, Problem) else captions
    return read


def _draft(path: str, text: str) -> Place | None:
    """Where a file says that it is a draft."""
    lines = enumerate(text.splitlines(), 1)
    return next((Place(path, number) for number, line in lines if DRAFT_NOTE in line), None)
