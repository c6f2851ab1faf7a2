"""Languages that are called by their names where a tag belongs, such as ``english`` for ``en``."""

from __future__ import annotations

import re
from collections.abc import Iterator

from generator.model.places import Places
from generator.model.site import LANGUAGE_TAG
from generator.problems import Problem
from generator.read.source import Data


def tag_hint(word: str) -> str:
    """A hint with the tag of a language that is called by its English name or its own, or what a tag is."""
    from babel import Locale  # noqa: PLC0415  # takes its time to load, and only a mistake needs it

    named = {name.lower(): tag for tag, name in Locale.parse("en").languages.items()}
    own = {str(Locale.parse(tag).language_name).lower(): tag for tag in _COMMON}
    tag = (own | named).get(word.strip().lower()) or re.sub("_", "-", word.strip()).partition(".")[
        0
    ]
    if re.fullmatch(LANGUAGE_TAG, tag):
        return f"write `{tag}`"
    return "write language tags such as en or es"


_COMMON = ("es", "fr", "de", "pt", "it", "vi", "so", "ar", "zh", "ru", "pl", "uk", "tr", "am", "hi")
"""Languages that are looked for under their own names too."""


def caption_languages(video: Data, places: Places) -> Iterator[Problem]:
    """Captions under a key that is no language tag.

    Args:
        video: what a lesson says of its video.
        places: where it says so.
    """
    captions = video.get("captions") if isinstance(video, dict) else None
    for key in captions if isinstance(captions, dict) else ():
        if not re.fullmatch(LANGUAGE_TAG, key):
            place = places.key("video", "captions", key)
            yield Problem(place, f"`{key}` is no language tag", tag_hint(key))
