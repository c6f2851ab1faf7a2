"""What the files beside the lessons hold: films, still pictures, captions."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from generator.media.published import published


@dataclass(frozen=True, slots=True)
class BesideLessons:
    """Reads a file by its path on the site, which is its path below ``lessons/``: ``soup/soup.mp4``."""

    folder: Path
    """``lessons/`` of the site."""

    def __call__(self, path: str) -> bytes:
        """What goes out of the file.

        Raises:
            UnfitError: as below.
            OSError: it was there when its lesson was read, and is not any more.
        """
        return b"".join(published(self.folder / path).pieces())
