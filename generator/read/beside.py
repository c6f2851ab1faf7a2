"""What the files beside the lessons hold: films, still pictures, captions."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from generator.media.content import Content
from generator.media.published import checked


@dataclass(frozen=True, slots=True)
class BesideLessons:
    """Looks into a file by its path on the site, which is its path below ``lessons/``: ``soup/soup.mp4``."""

    folder: Path
    """``lessons/`` of the site."""

    def __call__(self, path: str) -> Content:
        """What goes out of the file; it is read when it is asked for, and not before.

        Raises:
            OSError: it was there when its lesson was read, and is not any more.
        """
        return checked(self.folder / path)
