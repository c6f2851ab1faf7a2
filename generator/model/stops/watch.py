"""A stretch of the video to watch."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from pydantic import Field

from generator.model.moment import Moment, clock
from generator.model.stops.base import BaseStop


class WatchStop(BaseStop):
    """Watch from one moment to another."""

    kind: Literal["watch"] = "watch"
    start: Moment = Field(alias="from")
    """Where watching begins."""
    end: Moment = Field(alias="to")
    """Where watching ends."""

    @property
    def at(self) -> Moment:
        """Where the stop begins, in seconds."""
        return self.start

    @property
    def times(self) -> Mapping[str, Moment]:
        """Both ends."""
        return {"from": self.start, "to": self.end}

    @property
    def until(self) -> Moment:
        """Where watching ends."""
        return self.end

    def _about(self) -> str:
        return "" if self.say else f"watch from {clock(self.start)}"
