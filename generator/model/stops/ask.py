"""A question at a pause point, with its hint and its answer on request."""

from __future__ import annotations

from typing import Literal

from pydantic import model_validator

from generator.model.asked import Choice, Sum, Which, check_choices
from generator.model.stops.base import PauseStop
from generator.model.text_marks import Text


class AskStop(PauseStop):
    """Ask, and reveal when the learner wants to check."""

    kind: Literal["ask"] = "ask"
    prompt: Text
    """The question."""
    hint: Text | None = None
    """A small step toward the answer."""
    reveal: Text
    """The answer, shown on request."""
    choices: tuple[Choice, ...] = ()
    """Answers to choose from, one of them with `right: true`; without them the question is open."""
    answer: Sum | None = None
    """Instead of `choices`: the answer as arithmetic over names of numbers, as `trace` prints them."""
    which: Which | None = None
    """Instead of `choices`: which food or side of a comparison it is."""

    @model_validator(mode="after")
    def _one_answer(self) -> AskStop:
        check_choices(self.choices)
        if sum((bool(self.choices), self.answer is not None, self.which is not None)) > 1:
            raise ValueError("takes only one of `choices:`, `answer:` and `which:`")
        return self

    @property
    def looked_back_at(self) -> bool:
        """Unless one of its own choices is right."""
        return not self.choices

    @property
    def computed(self) -> tuple[str | None, Which | None] | None:
        """Its sum, or what it chooses among."""
        return (self.answer, self.which) if self.answer or self.which else None

    def _about(self) -> str:
        return self.prompt
