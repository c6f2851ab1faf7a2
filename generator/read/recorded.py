"""``recorded.yaml``: what the numbers were when a lesson was filmed, and the captions of that film."""

from __future__ import annotations

from pathlib import Path

from generator.model.lesson import Video
from generator.model.recorded import RECORDED, Recorded, RecordedFile
from generator.problems import Problem
from generator.read.explain import validate
from generator.read.files import LARGEST_LESSON, read_text
from generator.read.kept_file import read_kept
from generator.read.source import Data


def read_recorded(
    root: Path, folder: str, video: Video | None, problems: list[Problem]
) -> Recorded | None:
    """The record of a lesson's film; nothing where none was kept.

    Args:
        root: folder of the site.
        folder: the lesson's own folder, from the root.
        video: the recording the lesson names.
        problems: where mistakes in the file are added.
    """
    source = read_kept(root, f"{folder}/{RECORDED}", LARGEST_LESSON, problems)
    if source is None:
        return None
    data, by_place = _without_places(source.data)
    made = validate(RecordedFile, data, source.places)
    if isinstance(made, list):
        problems += made
        return None
    names = video.captions.values() if video else ()
    read = {name: read_text(root, f"{folder}/{name}") for name in names}
    texts = {name: text for name, text in read.items() if isinstance(text, str)}
    return Recorded(made, source.places, texts, by_place)


def _without_places(data: Data) -> tuple[Data, bool]:
    """A record without its numbers where it has any of the older shape, and whether it had.

    Those were named by the place of their row (``id: lunch.row-1.first``), which says of no food.
    """
    figures = data.get("figures") if isinstance(data, dict) else None
    old = isinstance(figures, list) and any(
        isinstance(one, dict) and "id" in one and "kind" not in one for one in figures
    )
    return ({**data, "figures": []}, True) if old and isinstance(data, dict) else (data, False)
