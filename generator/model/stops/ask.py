"""A question at a pause point, with its hint and its answer on request."""

from __future__ import annotations

from typing import Literal

from generator.model.moment import Moment
from generator.model.stops.base import BaseStop, Text


class AskStop(BaseStop):
    """Ask, and reveal when the learner wants to check."""

    kind: Literal["ask"] = "ask"
    at: Moment | None = None
    """Pause point, written as ``"1:10"``; held in seconds."""
    prompt: Text
    """The question."""
    hint: Text | None = None
    """A small step towards the answer."""
    reveal: Text
    """The answer, shown on request."""
