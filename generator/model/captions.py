"""Captions of a video: what is heard, and from when to when it is shown."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Annotated, Self

from pydantic import Field, model_validator

from generator.model.base import Frozen
from generator.model.grades import GradeBand
from generator.model.pace import PACES, UNHURRIED
from generator.problems import Place

DRAFT_NOTE = "Draft made from the script. Delete this note before you edit, and the draft is never made over your words."
"""Stands in a caption file that may be made anew."""
MEANT_NOTE = "NOTE meant:"
"""Begins a note before a cue whose numbers, named in the note, are none of the lesson's."""
Seconds = Annotated[Decimal, Field(gt=0, le=60, decimal_places=3, allow_inf_nan=False)]


class CaptionLimits(Frozen):
    """What captions are held to, and drafts are made by. Without a word in ``site_data/site.yaml``, the guidelines' own."""

    line: Annotated[int, Field(ge=10, le=80)] = 32
    """Letters on one line: the older DCMP Captioning Key (read, status R)."""
    lines: Annotated[int, Field(ge=1, le=4)] = 2
    """Lines of one cue: DCMP (from memory, status M)."""
    shortest: Seconds = Decimal("1.3")
    """Seconds a cue stands at least: DCMP, 40 frames (from memory, status M)."""
    longest: Seconds = Decimal(6)
    """Seconds a cue stands at most: DCMP (from memory, status M)."""
    silence: Seconds = Decimal(6)
    """Seconds without a cue while the script goes on. Ours, no source: as long as one cue may stand."""
    words_per_minute: Mapping[GradeBand, Annotated[int, Field(ge=60, le=240)]] = Field(
        default_factory=dict
    )
    """The fastest a cue may be read, by grades; a band left out keeps that of ``PACES``."""

    def fastest(self, band: GradeBand) -> int:
        """Words a minute for the band of a lesson's youngest grade."""
        return self.words_per_minute.get(band, PACES[band].read)

    def drafted(self, band: GradeBand) -> int:
        """Words a minute of a draft for the band: unhurried, and never faster than may be read."""
        return min(UNHURRIED, self.fastest(band))

    @model_validator(mode="after")
    def _leave_room(self) -> Self:
        if self.shortest > self.longest:
            raise ValueError(
                f"let no cue stand: `shortest` is {self.shortest} seconds and `longest` "
                f"{self.longest}: make `longest` the larger one"
            )
        return self


@dataclass(frozen=True, slots=True)
class Cue:
    """A few words, shown for a while."""

    start_ms: int
    """When they appear, ms from the start of the video."""
    end_ms: int
    """When they go, ms; always later than ``start_ms``."""
    lines: tuple[str, ...]
    """The words as they are read: no tags, and ``&amp;`` is ``&``."""
    place: Place = field(compare=False)
    """Where its times stand in the file; its words begin on the next line."""
    id: str = ""
    """The name it was given, if any."""
    meant: str = ""
    """Numbers in it that are meant and are none of the lesson's, as a note before it says."""

    @property
    def text(self) -> str:
        """All lines as one."""
        return " ".join(self.lines)


@dataclass(frozen=True, slots=True)
class CaptionFile:
    """The captions in one language."""

    path: str
    """Relative to the project's root, with forward slashes."""
    language: str
    """Language tag of BCP 47."""
    cues: tuple[Cue, ...] = field(repr=False)
    """In the order of their starts."""
    draft: Place | None = None
    """Where it says that it is a draft made from the script; nothing where that note is gone."""


def clock_ms(milliseconds: int) -> str:
    """``1:05.250`` as an educator finds it in a player; parts of a second only where there are any."""
    seconds, rest = divmod(milliseconds, 1000)
    minutes, seconds = divmod(seconds, 60)
    hours, minutes = divmod(minutes, 60)
    head = f"{hours}:{minutes:02}" if hours else f"{minutes}"
    return f"{head}:{seconds:02}" + (f".{rest:03}" if rest else "")
