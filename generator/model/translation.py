"""A lesson's texts in another language, and which original each was made from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from hashlib import sha256

from generator.model.places import Path, Places


@dataclass(frozen=True, slots=True)
class Translation:
    """What stands in ``lesson.<language>.yaml``."""

    language: str
    """Language tag of BCP 47."""
    texts: Mapping[Path, str] = field(repr=False)
    """Texts by their path in the translation: ``("stops", "guess", "prompt")``."""
    made_from: Mapping[str, str] = field(repr=False)
    """By path written with points: the marks of the original and of the translation when they agreed."""
    places: Places
    """Where each text stands."""

    def is_stale(self, path: Path, original: str) -> bool:
        """Whether the original has changed since, and the translation has not."""
        kept = self.made_from.get(dotted(path))
        if kept is None or path not in self.texts:
            return False
        of, made = kept.split(" ") if kept.count(" ") == 1 else ("", "")
        return text_mark(original) != of and text_mark(self.texts[path]) == made


def dotted(path: Path) -> str:
    """``stops.guess.prompt``, for a key in a file."""
    return ".".join(str(part) for part in path)


def text_mark(text: str) -> str:
    """Six signs that change when the words change; white space does not count."""
    return sha256(" ".join(text.split()).encode()).hexdigest()[:6]
