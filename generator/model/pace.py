"""Words a minute that children of a grade band can follow: one table for script, drafts and captions."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from generator.model.grades import GradeBand


@dataclass(frozen=True, slots=True)
class Pace:
    """How fast words may come, in words a minute."""

    spoken: int
    """Narration that is listened to without a text.

    What audiologists quote (2013; a transcription, status S): 120 to 124 at 3 to 5 years, 128 to
    130 at 5 to 7, about 135 in grades 5 and 6 and 135 to 140 in middle school. They are the
    statements of experts and no controlled standard, so the lower figure is taken.
    """
    read: int
    """The fastest a caption may be read.

    130 for lower-level educational media, and 120 for its slowest readers: DCMP Captioning Key
    (read, status R). 140 for middle level: the same (from memory, status M).
    """


PACES: Mapping[GradeBand, Pace] = {
    GradeBand.K_2: Pace(spoken=120, read=120),
    GradeBand.G3_5: Pace(spoken=130, read=130),
    GradeBand.G6_8: Pace(spoken=135, read=140),
}
"""Pace by grade band."""

UNHURRIED = min(pace.spoken for pace in PACES.values())
"""Words a minute of a draft that nobody has spoken yet: the slowest of the table leaves everybody air."""
