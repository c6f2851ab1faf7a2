"""The parting question: one last question of a lesson, with an answer the lesson computes."""

from __future__ import annotations

from pydantic import model_validator

from generator.model.asked import Sum, Which
from generator.model.base import Frozen
from generator.model.text_marks import Text


class Parting(Frozen):
    """One last question."""

    prompt: Text
    """The question."""
    hint: Text | None = None
    """A small step toward the answer."""
    answer: Sum | None = None
    """The answer as arithmetic over names of numbers, as `trace` prints them: `half lunch.total.gap`, with + − × ÷, half, brackets and whole numbers to multiply or divide by."""
    which: Which | None = None
    """Instead of `answer`: which food or side of a comparison it is."""
    reveal: Text | None = None
    """A sentence after the answer."""

    @model_validator(mode="after")
    def _one_answer(self) -> Parting:
        if (self.answer is None) == (self.which is None):
            raise ValueError(
                "needs one of `answer:` and `which:`, so that the lesson can compute it"
            )
        return self
