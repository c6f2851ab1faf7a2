"""A question at a pause point, with its hint and its answer on request."""

from __future__ import annotations

from typing import Literal

from generator.model.stops.base import PauseStop
from generator.model.text_marks import Text


class AskStop(PauseStop):
    """Ask, and reveal when the learner wants to check."""

    kind: Literal["ask"] = "ask"
    prompt: Text
    """The question."""
    hint: Text | None = None
    """A small step towards the answer."""
    reveal: Text
    """The answer, shown on request."""

    def _about(self) -> str:
        return self.prompt
