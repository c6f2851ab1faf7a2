"""What the view of every stop has, whatever its kind."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from generator.present.views.number import Number


@dataclass(frozen=True, slots=True)
class Head:
    """What every stop shows."""

    kind: str
    """Its key in a lesson file; also the name of its folder in ``theme/stops/``."""
    id: str
    """Address on the page."""
    heading: str
    at: Number | None
    """When it begins in the video; its machine's spelling is in seconds."""
    formerly: tuple[str, ...] = ()
    """Addresses it had before, which lead to it."""


class StopView(Protocol):
    """One stop; what else it shows is its kind's own."""

    @property
    def head(self) -> Head:
        """What every stop shows."""
