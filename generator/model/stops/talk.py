"""Something to talk over, with no answer to check."""

from __future__ import annotations

from typing import Literal

from generator.model.stops.base import PauseStop
from generator.model.text_marks import Text


class TalkStop(PauseStop):
    """A prompt for the family or the class."""

    kind: Literal["talk"] = "talk"
    prompt: Text
    """What to talk about."""
    ideas: tuple[Text, ...] = ()
    """A few ideas to begin with."""

    def _about(self) -> str:
        return self.prompt
