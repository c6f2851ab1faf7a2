"""A question with a few answers to choose from."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field

from generator.model.stops.base import PauseStop
from generator.model.text_marks import Text


class QuizStop(PauseStop):
    """Choose, then check."""

    kind: Literal["quiz"] = "quiz"
    prompt: Text
    """The question."""
    choices: Annotated[tuple[Text, ...], Field(min_length=2)]
    """What to choose from; the first is right."""
