"""Something to talk over, with no answer to check."""

from __future__ import annotations

from typing import Literal

from generator.model.moment import Moment
from generator.model.stops.base import BaseStop, Text


class TalkStop(BaseStop):
    """A prompt for the family or the class."""

    kind: Literal["talk"] = "talk"
    at: Moment | None = None
    """Pause point, written as ``"1:10"``; held in seconds."""
    prompt: Text
    """What to talk about."""
    ideas: tuple[Text, ...] = ()
    """A few ideas to begin with."""
